import type { Crop } from "#lib/domain/records/crop";
import type { Colour, StemLength } from "#lib/domain/words";
import { buyInFinder } from "./buy-in";
import type { Match } from "./match";
import { ordersFinder } from "./orders";
import type { Plan } from "./plan";
import { bunchedTogether, type Surplus, stemsOver, worthCutting } from "./surplus";

/** Days ahead on which what is offered is cut: soon enough to be sure of, late enough to sell it (common practice). */
export const OFFERED_FROM_DAYS = 3;
export const OFFERED_UP_TO_DAYS = 7;

/**
 * Stems to offer of one crop, colour and length, in whole bunches [ST4]. `stemLength` is null where nobody has told it. All of them are cut by `readyDay` and
 * keep until `keepsUntil`, which is no earlier, in whichever year it turns out to be. Day numbers.
 */
export type Offer = {
  readonly crop: Crop;
  readonly colour: Colour;
  readonly stemLength: StemLength | null;
  readonly bunchCount: number;
  readonly stems: number;
  readonly readyDay: number;
  readonly keepsUntil: number;
};

/**
 * What can be offered to buyers on a day, most stems first: what is cut three to seven days later and is nobody's in the plan's year and in its poor years, bunched of
 * stems that are all cut, and still keep, on one day [ST4].
 * @param poor   the plan's needs matched in poor years (`poorMatches`)
 * @param today  a day number
 */
export function offers(plan: Plan, poor: readonly Match[], today: number): Offer[] {
  const { snapshot, meetingSeasons, seasonYear } = plan;
  const firstDay = today + OFFERED_FROM_DAYS;
  const lastDay = today + OFFERED_UP_TO_DAYS;
  const isOffered = ({ cutDay }: Surplus) => cutDay >= firstDay && cutDay <= lastDay;
  const ordersBeside = ordersFinder(snapshot, meetingSeasons, buyInFinder(snapshot));
  const inPoor = poor.map((match) =>
    worthCutting(stemsOver(ordersBeside(match)?.match ?? match, seasonYear)).filter(isOffered),
  );
  return bunchedTogether(worthCutting(plan.work.unclaimed).filter(isOffered))
    .flatMap((lots) => offersOf(lots, inPoor, firstDay, lastDay))
    .sort(
      (a, b) => b.stems - a.stems || a.crop.id - b.crop.id || byText(a.colour, b.colour) || a.readyDay - b.readyDay,
    );
}

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * One crop, colour and length: the day on which most whole bunches stand together, the first of such days, then the same of the stems that are of no use on it, until none
 * is whole. Of each variety it is the least of all years.
 */
function offersOf(
  lots: readonly Surplus[],
  inPoor: readonly (readonly Surplus[])[],
  firstDay: number,
  lastDay: number,
) {
  const [{ crop, variety }] = lots;
  const ids = new Set(lots.map((lot) => lot.variety.id));
  let years = [lots, ...inPoor.map((year) => year.filter((lot) => ids.has(lot.variety.id)))];
  const found: Offer[] = [];
  for (;;) {
    let best = { bunchCount: 0, day: firstDay };
    for (let day = firstDay; day <= lastDay; day++) {
      const bunchCount = Math.floor(sureStems(ids, years, day) / crop.bunchStems.count);
      if (bunchCount > best.bunchCount) best = { bunchCount, day };
    }
    const { bunchCount, day } = best;
    if (bunchCount === 0) return found;
    const ofUse = years.flatMap((year) => year.filter((lot) => isOfUse(lot, day)));
    found.push({
      ...{ crop, colour: variety.colour, stemLength: crop.stemLength },
      ...{ bunchCount, stems: bunchCount * crop.bunchStems.count, readyDay: day },
      keepsUntil: Math.min(...ofUse.map(({ lastUsefulDay }) => lastUsefulDay)),
    });
    years = years.map((year) => year.filter((lot) => !isOfUse(lot, day)));
  }
}

/** Whether a lot is cut by a day and still keeps on it. */
const isOfUse = ({ cutDay, lastUsefulDay }: Surplus, day: number): boolean => cutDay <= day && day <= lastUsefulDay;

/** Stems of some varieties that are of use on a day in every year: of each variety the least. */
function sureStems(varietyIds: Iterable<number>, years: readonly (readonly Surplus[])[], day: number): number {
  let sure = 0;
  for (const id of varietyIds) {
    const inYears = years.map((year) =>
      year.reduce((sum, lot) => (lot.variety.id === id && isOfUse(lot, day) ? sum + lot.stems : sum), 0),
    );
    sure += Math.min(...inYears);
  }
  return sure;
}
