/** 1 yd = 0.9144 m exactly (international yard, 1959). */
const METRES_PER_YARD = 0.9144;
const METRES_PER_FOOT = METRES_PER_YARD / 3;

export const cubicYards = (cubicMetres: number): number => cubicMetres / METRES_PER_YARD ** 3;
export const squareFeet = (squareMetres: number): number => squareMetres / METRES_PER_FOOT ** 2;
