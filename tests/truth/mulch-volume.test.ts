import { expect, test } from "vitest";
import { cubicYards, mulchCubicYards, squareFeet } from "#lib/plan/winter/leaves";

/**
 * Cubic yards per 1,000 square feet by depth in inches: a materials supplier's table (trade, ECOTURF,
 * http://ecoturfco.com/MulchCalculator.html). No extension table was found, so the identity 324 (BHG-MULCH prints it) is the check,
 * and the table's rounding is its error.
 */
const PUBLISHED = [
  { inches: 2, yardsPer1000SquareFeet: 6.17 },
  { inches: 3, yardsPer1000SquareFeet: 9.26 },
  { inches: 4, yardsPer1000SquareFeet: 12.3 },
  { inches: 6, yardsPer1000SquareFeet: 18.5 },
  { inches: 8, yardsPer1000SquareFeet: 24.7 },
];

test("mulch by depth agrees with the published table within 1 %, worst 0.4 %", () => {
  const errors = PUBLISHED.map(({ inches, yardsPer1000SquareFeet }) =>
    Math.abs(mulchCubicYards(1000, inches) / yardsPer1000SquareFeet - 1),
  );
  expect(Math.max(...errors)).toBeLessThan(0.004);
});

test("a cubic yard covers 324 square feet an inch deep, and 100 square feet 8 inches deep take 2.47 cubic yards", () => {
  expect(mulchCubicYards(324, 1)).toBe(1);
  expect(mulchCubicYards(100, 8)).toBeCloseTo(2.469, 3);
});

test("cubic metres in yards say the same as feet and inches: area times depth, whichever way it is measured", () => {
  for (const areaSquareMetres of [18, 37.5, 120])
    for (const depthMetres of [0.1, 0.2032, 0.3]) {
      const byYards = cubicYards(areaSquareMetres * depthMetres);
      expect(mulchCubicYards(squareFeet(areaSquareMetres), depthMetres / 0.0254)).toBeCloseTo(byYards, 9);
    }
  expect(cubicYards(0.764554857984)).toBeCloseTo(1, 12);
});
