import { gammaShareAbove } from "./gamma";

/** The share of a standard normal distribution that lies below `score`. Both tails to about 13 digits. Source: NIST DLMF 7.11.2. */
export function normalShare(score: number): number {
  const tail = 0.5 * gammaShareAbove((score * score) / 2, 0.5);
  return score < 0 ? tail : 1 - tail;
}

const CENTRE_TOP = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087,
  33430.57558358813, 2509.0809287301227,
];
const CENTRE_BOTTOM = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271, 28729.085735721943,
  5226.495278852546,
];
const SHOULDER_TOP = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684, 0.2417807251774506,
  0.022723844989269184, 0.0007745450142783414,
];
const SHOULDER_BOTTOM = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  0.0005475938084995345, 1.0507500716444169e-9,
];
const TAIL_TOP = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
  0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
];
const TAIL_BOTTOM = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 1.8463183175100548e-5,
  1.421511758316446e-7, 2.0442631033899397e-15,
];

/**
 * The score below which `share` of a standard normal distribution lies; about 15 digits.
 * @param share  between 0 and 1, neither included
 * @throws RangeError if it is not
 * Source: M. J. Wichura, "Algorithm AS 241: the percentage points of the normal distribution", Applied Statistics 37, 1988.
 */
export function normalQuantile(share: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`share must lie between 0 and 1, got ${share}`);
  const fromMiddle = share - 0.5;
  if (Math.abs(fromMiddle) <= 0.425) {
    const r = 0.180625 - fromMiddle * fromMiddle;
    return (fromMiddle * polynomial(CENTRE_TOP, r)) / polynomial(CENTRE_BOTTOM, r);
  }
  const r = Math.sqrt(-Math.log(fromMiddle < 0 ? share : 1 - share));
  const score =
    r <= 5
      ? polynomial(SHOULDER_TOP, r - 1.6) / polynomial(SHOULDER_BOTTOM, r - 1.6)
      : polynomial(TAIL_TOP, r - 5) / polynomial(TAIL_BOTTOM, r - 5);
  return fromMiddle < 0 ? -score : score;
}

function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let index = coefficients.length - 1; index >= 0; index--) sum = sum * x + coefficients[index];
  return sum;
}
