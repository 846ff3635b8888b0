import { dayInYear, toDayNumber } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";
import { betaQuantile } from "#lib/maths/beta";
import { binomialQuantile } from "#lib/maths/binomial";
import { gammaQuantile } from "#lib/maths/gamma";
import { normalQuantile } from "#lib/maths/normal";
import { sharesAt } from "#lib/maths/philox";
import { type OfScore, scoreTable } from "#lib/maths/score-table";
import { twoPieceNormal } from "#lib/maths/two-piece-normal";
import { countedShare, killingFrostOf } from "#lib/plan/road/plants-seen";
import { replay } from "#lib/plan/road/replay";
import { firstDayOf } from "#lib/plan/road/usual-year";
import { firstCutChances } from "./first-cut-chance";
import { type Spreads, together } from "./sample-spreads";
import { sampledRows } from "./sampled-rows";

/**
 * A planting as a season may turn it out: its first cut so many days late (early, when negative), and `plants` standing that yield what the
 * curve expects of each; not whole, since a good year counts as more of them.
 */
type SampledPlanting = { readonly shiftDays: number; readonly plants: number };

/** A season as it may turn out: its first frost, as a day number, and its plantings in the order of `sampledRows`. */
export type SampledSeason = { readonly frostDay: number; readonly plantings: readonly SampledPlanting[] };

const OF_THE_SEASON = 0;
const OF_A_PLANTING = 2;

/**
 * The seasons of a seed: season i depends on the seed, i and each planting's id alone, not on what was sampled before, nor on the
 * treatments, so that two plans meet the same seasons [R1].
 *
 * First cuts move by whole days (as in recorded years, or normal with the curve's spread: {@link firstCutChances}), yields are gamma with mean 1 and the curve's coefficient of variation, and
 * plants alive in the ground are beta-binomial; those that died are replanted as far as the farm replants. A part of each is the year's
 * and the rest the planting's own (`Spreads`). Frost comes as late against the farm's median as it came in the replayed year against the recorded median [Y4]; where there is none, it does not lean on
 * the rest: an assumption. What the store loses thins no bed: each clump's place is
 * planted again from the divisions that are left, and what they fall short is bought, which the winter's cost has in it already.
 * @param yearsOn  how many years after the season that was asked for this one is: each year has weather of its own
 */
export function seasonSampler(
  snapshot: Snapshot,
  seasonYear: number,
  seed: number,
  spreads: Spreads,
  chanceOf = firstCutChances(snapshot, seasonYear, spreads.sharedShare),
  yearsOn = 0,
): (season: number) => SampledSeason {
  const { farm } = snapshot;
  const rows = sampledRows(snapshot, seasonYear).map(({ row, isReplanted }) => ({
    ...row,
    isReplanted,
    firstCutChance: chanceOf(row),
  }));
  const frostDates = frostDatesOf(farm, seasonYear);
  const frostLate = replay(snapshot, seasonYear)?.frostDaysLate ?? [];
  const isFrostKnown = killingFrostOf(farm, seasonYear) !== null;
  const yearEnd = firstDayOf(seasonYear + 1);
  const yieldAt = known((spread: number) => gammaOfMeanOne(spread));
  const aliveAt = known((share: number) => betaOf(share, spreads.winterLikeness));
  const key = [seed | 0, 0] as const;

  return (season) => {
    const year = sharesAt(key, [season, 0, OF_THE_SEASON, yearsOn]);
    const timing = { share: year.a, score: normalQuantile(year.a) };
    const vigour = normalQuantile(year.b);
    const winter = normalQuantile(year.c);
    const plantings = rows.map(({ planting, bed, curve, firstCutChance, isReplanted, seen }) => {
      if (!curve) return { shiftDays: 0, plants: 0 };
      const own = sharesAt(key, [season, planting.id, OF_A_PLANTING, 0]);
      const yieldFactor = yieldAt(curve.yieldSpread)(together(vigour, normalQuantile(own.b), spreads.sharedShare));
      const { plantCount, aliveShare, treatment, winterSurvivalShare } = planting;
      let alive = plantCount * (aliveShare * yieldFactor);
      if ((treatment === "kept-in-ground" || isReplanted) && plantCount > 0) {
        const shared = bed.flags.includes("wet soil") ? spreads.wetSharedShare : spreads.sharedShare;
        const share = aliveAt(winterSurvivalShare ?? farm.winter.winterSurvivalShare);
        const survival = share(together(winter, normalQuantile(own.c), shared));
        const livingShare = countedShare(seen) ?? binomialQuantile(own.d, plantCount, survival) / plantCount;
        alive *= isReplanted ? (1 - livingShare) * farm.winter.replantDeadShare : livingShare;
      }
      return { shiftDays: firstCutChance.daysLate(timing, normalQuantile(own.a)), plants: alive };
    });
    // A killing frost that came ends the plantings that it touches, as in the plan, which reckoned with the median until then.
    const late = isFrostKnown ? 0 : (frostLate[Math.floor(year.a * frostLate.length)] ?? null);
    const frostDay = late === null ? frostDayAt(frostDates, year.d) : Math.min(yearEnd, frostDates.p50 + late);
    return { frostDay, plantings };
  };
}

type FrostDays = { readonly p10: number; readonly p50: number; readonly p90: number };

/** The farm's autumn frost dates as day numbers of a year. */
export const frostDatesOf = ({ frost }: Farm, seasonYear: number): FrostDays => ({
  p10: toDayNumber(dayInYear(frost.firstAutumnP10, seasonYear)),
  p50: toDayNumber(dayInYear(frost.firstAutumnP50, seasonYear)),
  p90: toDayNumber(dayInYear(frost.firstAutumnP90, seasonYear)),
});

/** The day by which `share` of all years have had their first frost: the farm's three dates are met to the day [R3]. */
export const frostDayAt = (dates: FrostDays, share: number): number =>
  Math.round(twoPieceNormal(dates, normalQuantile(share)));

/** A quantity that is made once for each parameter it is asked for. */
function known(make: (parameter: number) => OfScore): (parameter: number) => OfScore {
  const made = new Map<number, OfScore>();
  return (parameter) => {
    const found = made.get(parameter) ?? make(parameter);
    made.set(parameter, found);
    return found;
  };
}

/** So narrow a gamma distribution is a normal one for our purpose, and its own sums would be long. */
const NARROW = 0.01;

/** A gamma distribution of mean 1; a coefficient of variation of 0 is always 1. */
function gammaOfMeanOne(coefficientOfVariation: number): OfScore {
  if (coefficientOfVariation < NARROW) return (score) => 1 + coefficientOfVariation * score;
  const shape = 1 / coefficientOfVariation ** 2;
  return scoreTable((share) => gammaQuantile(share, shape) / shape);
}

/** A beta distribution of a mean and an intraclass correlation; without chance, the mean itself. */
function betaOf(mean: number, likeness: number): OfScore {
  if (mean <= 0 || mean >= 1 || likeness <= 0) return () => mean;
  const size = 1 / likeness - 1;
  return scoreTable((share) => betaQuantile(share, mean * size, (1 - mean) * size));
}
