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
 * Stems to offer of one crop, colour and length, in whole bunches [ST4]. `stemLength` is null where nobody has told it. All of them keep until `keepsUntil`,
 * a day number.
 */
export type Offer = {
  readonly crop: Crop;
  readonly colour: Colour;
  readonly stemLength: StemLength | null;
  readonly bunchCount: number;
  readonly stems: number;
  readonly keepsUntil: number;
};

/**
 * What can be offered to buyers on a day, most stems first: what is cut three to seven days later and is nobody's in the plan's year and in its poor years
 * [ST4].
 * @param poor   the plan's needs matched in poor years (`poorMatches`)
 * @param today  a day number
 */
export function offers(plan: Plan, poor: readonly Match[], today: number): Offer[] {
  const { snapshot, meetingSeasons, seasonYear } = plan;
  const isOffered = ({ cutDay }: Surplus) =>
    cutDay >= today + OFFERED_FROM_DAYS && cutDay <= today + OFFERED_UP_TO_DAYS;
  const ordersBeside = ordersFinder(snapshot, meetingSeasons, buyInFinder(snapshot));
  const inPoor = poor.map((match) =>
    stemsByVariety(worthCutting(stemsOver(ordersBeside(match)?.match ?? match, seasonYear)).filter(isOffered)),
  );
  const asPlanned = worthCutting(plan.work.unclaimed).filter(isOffered);
  return bunchedTogether(asPlanned)
    .flatMap((lots) => offerOf(lots, inPoor))
    .sort((a, b) => b.stems - a.stems || a.crop.id - b.crop.id || (a.colour < b.colour ? -1 : 1));
}

/** One crop, colour and length: of each variety the least of all years, together in whole bunches; nothing when they are less than one. */
function offerOf(lots: readonly Surplus[], inPoor: readonly ReadonlyMap<number, number>[]): Offer[] {
  const [{ crop, variety }] = lots;
  let sure = 0;
  for (const [id, stems] of stemsByVariety(lots)) sure += Math.min(stems, ...inPoor.map((year) => year.get(id) ?? 0));
  const bunchCount = Math.floor(sure / crop.bunchStems.count);
  if (bunchCount === 0) return [];
  return [
    {
      ...{ crop, colour: variety.colour, stemLength: crop.stemLength },
      ...{ bunchCount, stems: bunchCount * crop.bunchStems.count },
      keepsUntil: Math.min(...lots.map(({ lastUsefulDay }) => lastUsefulDay)),
    },
  ];
}

function stemsByVariety(lots: readonly Surplus[]): Map<number, number> {
  const sums = new Map<number, number>();
  for (const { variety, stems } of lots) sums.set(variety.id, (sums.get(variety.id) ?? 0) + stems);
  return sums;
}
