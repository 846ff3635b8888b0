import { expect, test } from "vitest";
import { normalShare } from "#lib/maths/normal";
import { normalExcess } from "#lib/maths/normal-excess";

test("at 0 it is 1 / √(2π); far above it is the score, far below nothing", () => {
  expect(normalExcess(0)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI), 12);
  expect(normalExcess(7.5)).toBe(7.5);
  expect(normalExcess(-7.5)).toBe(0);
});

test("between the places of its table it is z Φ(z) + φ(z), to a hundred-millionth, up to its ends", () => {
  for (let z = -6; z <= 6; z += 0.0137) {
    const exact = z * normalShare(z) + Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
    expect(Math.abs(normalExcess(z) - exact)).toBeLessThan(Math.abs(z) > 4.99 ? 1e-7 : 1e-8);
  }
});
