/** Shares are read to a millionth, so that the division below is one of whole numbers. */
const MILLION = 1_000_000;

/**
 * Of so many stems, in all, how many can be promised where a share of what is used is cut beyond it: stems ÷ (1 + share), rounded down [F14]. Whole numbers
 * this small divide exactly where the answer is whole.
 */
export const usableOf = (stems: number, cutSpareShare: number): number =>
  cutSpareShare === 0 ? stems : Math.floor((stems * MILLION) / (MILLION + Math.round(cutSpareShare * MILLION)));

/**
 * Of the stems cut day after day, how many can be promised: from the first day to any later one, as many as of all the stems cut until then [F14]. Never more on
 * a day than are cut on it.
 */
export function usableStems(cutStems: readonly number[], cutSpareShare: number): readonly number[] {
  if (cutSpareShare === 0) return cutStems;
  let cut = 0;
  let usable = 0;
  return cutStems.map((stems) => {
    cut += stems;
    const before = usable;
    usable = usableOf(cut, cutSpareShare);
    return usable - before;
  });
}
