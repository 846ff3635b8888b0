/** 1 yd = 0.9144 m exactly (international yard, 1959). */
const METRES_PER_YARD = 0.9144;
const METRES_PER_FOOT = METRES_PER_YARD / 3;
const METRES_PER_INCH = METRES_PER_FOOT / 12;

export const cubicYards = (cubicMetres: number): number => cubicMetres / METRES_PER_YARD ** 3;
export const squareFeet = (squareMetres: number): number => squareMetres / METRES_PER_FOOT ** 2;
export const inches = (metres: number): number => metres / METRES_PER_INCH;

/**
 * Cubic yards of mulch that cover so many square feet so many inches deep, before they settle: 27 cubic feet cover 324 square feet an inch
 * deep. The same as turning cubic metres into yards; kept because a grower with a loader thinks in it.
 */
export const mulchCubicYards = (areaSquareFeet: number, depthInches: number): number =>
  (areaSquareFeet * depthInches) / 324;
