import { cropAs } from "#lib/domain/crop-of-variety";
import { toDayNumber } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { MatchedSeason } from "./draft";
import { colourFitCents, cropFitCents } from "./fit";
import { forecast } from "./forecast";
import { type Hold, holdOf, holdWindow } from "./hold-window";
import type { Need } from "./needs";
import { openDayOf } from "./purchases";

/** Whether any stem that a need could take is cut in its hold window, whoever has it. */
export function blooms({ match }: Pick<MatchedSeason, "match">, need: Need): boolean {
  return match.supplies.some(
    ({ crop, variety, hold, days }) => couldBe(need, crop, variety) && days.some(inTimeFor(need, hold)),
  );
}

/**
 * Whether any stem that a need could take may be cut in its hold window in seasons beside those of a plan, whoever has it: said of their forecasts and
 * records, before the days that have passed of them are lived through. Where not, no match with them has any.
 */
export function mayBloomIn(seasons: readonly number[], snapshot: Snapshot): (need: Need) => boolean {
  const { farm } = snapshot;
  const crops = new ById("crop", snapshot.crops);
  const varieties = new ById("variety", snapshot.varieties);
  const stems = [
    ...seasons
      .flatMap((season) => forecast(snapshot, season).plantings)
      .map(({ variety, cutDays, asPassed }) => ({ variety, days: [...cutDays, ...(asPassed?.cutDays ?? [])] })),
    ...[
      ...snapshot.cuts,
      ...snapshot.coolerStock,
      ...snapshot.purchases.map((one) => ({ varietyId: one.varietyId, cutOn: openDayOf(one) })),
    ].map(({ varietyId, cutOn }) => ({ variety: varieties.get(varietyId), days: [toDayNumber(cutOn)] })),
  ].map(({ variety, days }) => ({ variety, days, crop: cropAs(variety, crops.get(variety.cropId)) }));
  return (need) =>
    stems.some(
      ({ crop, variety, days }) => couldBe(need, crop, variety) && days.some(inTimeFor(need, holdOf(crop, farm))),
    );
}

const couldBe = (need: Need, crop: Crop, { colour }: Pick<Variety, "colour">): boolean =>
  cropFitCents(need, crop) !== null && colourFitCents(need, colour) !== null;

function inTimeFor({ eventDay, leadDays }: Need, hold: Hold): (day: number) => boolean {
  const { earliest, latest } = holdWindow(eventDay, leadDays, hold);
  return (day) => day >= earliest && day <= latest;
}
