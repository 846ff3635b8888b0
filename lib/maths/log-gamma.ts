const SPAN = 7;
const COEFFICIENTS = [
  0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];

/**
 * The natural logarithm of the gamma function, for arguments above 0; relative error about 1e-14.
 * Source: C. Lanczos, "A precision approximation of the gamma function", SIAM J. Numer. Anal. 1, 1964; coefficients for g = 7, n = 9
 * from memory, held to the factorials in tests/maths/chance.test.ts.
 */
export function logGamma(argument: number): number {
  if (argument < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * argument)) - logGamma(1 - argument);
  const x = argument - 1;
  let sum = COEFFICIENTS[0];
  for (let index = 1; index < COEFFICIENTS.length; index++) sum += COEFFICIENTS[index] / (x + index);
  const base = x + SPAN + 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (x + 0.5) * Math.log(base) - base + Math.log(sum);
}
