import fc from "fast-check";

/** How any crop is stored, from any sourced number between a least and a most. */
export const anyStore = <Number>(between: (least: number, most: number) => fc.Arbitrary<Number>) => ({
  stretchDays: between(0, 120),
  dryHoldDays: between(0, 120),
  holdUpToC: between(-5, 40),
  notColderC: between(-5, 40),
  cutSpareShare: between(0, 1),
});

/** How any farm keeps its cut stems. */
export const anyStoreSettings = (between: (least: number, most: number) => fc.Arbitrary<number>) => ({
  storeC: fc.option(between(-5, 40)),
  coolRoomC: between(-5, 40),
  storesDry: fc.boolean(),
});
