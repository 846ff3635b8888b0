import { type Day, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { Parsed } from "#lib/domain/problem";
import { COOLER_MOVE, type CoolerMoveDraft } from "#lib/domain/records/cooler-move";
import type { Farm } from "#lib/domain/records/farm-settings";
import { type CoolerLot, lotOn, storedLots } from "#lib/plan/road/cooler";
import { isPast } from "#lib/plan/words/cooler-words";
import { inWholes } from "#lib/plan/words/numbers";
import { loadPlan } from "../../load";
import type { FormValues } from "../../ui/form-values";

/** The lots of the cooler on a day. */
const lotsToday = (today: Day): CoolerLot[] => storedLots({ ...loadPlan(yearOf(today)), today: toDayNumber(today) });

/** Reads what left a lot today. Refused when fewer stems stand there: somebody else may have taken them meanwhile. */
export function moveOf(values: FormValues, farm: Farm, today: Day): Parsed<CoolerMoveDraft[]> {
  const move = values.record(COOLER_MOVE, farm, { given: { movedOn: today } });
  if (!move.ok) return move;
  const { varietyId, cutOn, stemCount } = move.parsed;
  const left = lotOn(lotsToday(today), varietyId, toDayNumber(cutOn))?.leftStems ?? 0;
  if (stemCount > left)
    values.refuse(
      "stemCount",
      left === 0 ? "none are left of this lot" : `only ${inWholes(left)} are left of this lot`,
    );
  return stemCount > left ? values.refusal() : { ok: true, parsed: [move.parsed] };
}

/** All that stands in lots past their days, as thrown away today. */
export function pastLots(values: FormValues, today: Day): Parsed<CoolerMoveDraft[]> {
  const past = lotsToday(today).filter((lot) => lot.leftStems > 0 && isPast(lot, toDayNumber(today)));
  if (past.length === 0) values.refuse("", "nothing is past its days any more");
  return past.length === 0 ? values.refusal() : { ok: true, parsed: past.map((lot) => thrownAway(lot, today)) };
}

const thrownAway = ({ variety, cutDay, leftStems }: CoolerLot, today: Day): CoolerMoveDraft => ({
  varietyId: variety.id,
  bookingId: null,
  movedOn: today,
  cutOn: toDay(cutDay),
  kind: "thrown away",
  stemCount: leftStems,
});
