import type { StemsTruth, TimingTruth, Truth } from "./truth";

/** A first cut as it came and as it was said, day numbers. */
export type ComparedFirstCut = { readonly cameDay: number; readonly saidDay: number };

/** Stems of a picking day as they came and as they were said, as far as the record knows. */
export type ComparedPicking = { readonly cameStems: number; readonly saidStems: number };

/** Eight first cuts in ten: what a grower can count on, but for the odd one. Our choice. */
const MOST = 0.8;

/** Sums up what was compared [HT5]. */
export const truthOf = (firstCuts: readonly ComparedFirstCut[], pickings: readonly ComparedPicking[]): Truth => ({
  timing: firstCuts.length === 0 ? null : timingOf(firstCuts),
  stems: pickings.length === 0 ? null : stemsOf(pickings),
});

function timingOf(firstCuts: readonly ComparedFirstCut[]): TimingTruth {
  const plantingCount = firstCuts.length;
  const late = firstCuts.map(({ cameDay, saidDay }) => cameDay - saidDay);
  const off = late.map(Math.abs).sort((a, b) => a - b);
  return {
    plantingCount,
    daysLate: sumOf(late) / plantingCount,
    mostDaysOff: off[Math.ceil(MOST * plantingCount) - 1],
    meanCameDay: sumOf(firstCuts.map(({ cameDay }) => cameDay)) / plantingCount,
  };
}

const stemsOf = (pickings: readonly ComparedPicking[]): StemsTruth => ({
  pickingCount: pickings.length,
  cameStems: sumOf(pickings.map(({ cameStems }) => cameStems)),
  saidStems: sumOf(pickings.map(({ saidStems }) => saidStems)),
  offStems: sumOf(pickings.map(({ cameStems, saidStems }) => Math.abs(cameStems - saidStems))),
});

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);
