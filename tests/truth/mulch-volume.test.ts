import { expect, test } from "vitest";
import { MEASURES } from "#lib/domain/measures";
import { leafCubicMetres } from "#lib/plan/winter/costs";
import { bed, farm } from "../small-farm";

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

/** Cubic yards of leaves that the tool reckons for a bed of so many square feet, so many inches deep. A foot is 0.3048 m, by definition. */
function yardsOf(areaSquareFeet: number, depthInches: number): number {
  const rates = farm();
  const winter = { ...rates.winter, leafDepthMetres: depthInches * 0.0254 };
  const covered = bed({ id: 1, lengthMetres: areaSquareFeet * 0.3048, widthMetres: 0.3048 });
  return leafCubicMetres(covered, { ...rates, winter }) * MEASURES.us.volume.shownPerStored;
}

test("leaves by depth agree with the published table within 1 %, worst 0.4 %", () => {
  const errors = PUBLISHED.map(({ inches, yardsPer1000SquareFeet }) =>
    Math.abs(yardsOf(1000, inches) / yardsPer1000SquareFeet - 1),
  );
  expect(Math.max(...errors)).toBeLessThan(0.004);
});

test("a cubic yard covers 324 square feet an inch deep", () => {
  expect(yardsOf(324, 1)).toBeCloseTo(1, 12);
});

test("a cubic yard is 0.764554857984 cubic metres, and a square metre 10.7639 square feet", () => {
  expect(0.764554857984 * MEASURES.us.volume.shownPerStored).toBeCloseTo(1, 12);
  expect(MEASURES.us.area.shownPerStored).toBeCloseTo(10.7639, 4);
});
