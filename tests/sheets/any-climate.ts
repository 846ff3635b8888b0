import fc from "fast-check";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((number) => number + 0);

/** Any climate, at a station of any of these names. */
export const anyClimate = (station: fc.Arbitrary<string>) =>
  fc.record({
    station,
    latitudeDegrees: between(-66, 66),
    monthlyHighsC: fc.array(between(10, 60), { minLength: 12, maxLength: 12 }),
    monthlyLowsC: fc.array(between(-60, 10), { minLength: 12, maxLength: 12 }),
  });
