const MOST_RINGS = 40;
const UNITS = [5, 10, 20, 50, 100, 200, 500, 1000];

/** Stems that one ring of a page stands for, so that its largest gap is a handful of rows. */
export const ringUnit = (mostStems: number): number =>
  UNITS.find((unit) => mostStems / unit <= MOST_RINGS) ?? UNITS[UNITS.length - 1];
