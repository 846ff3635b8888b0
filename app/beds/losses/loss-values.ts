import type { Day } from "#lib/domain/day";
import type { Parsed } from "#lib/domain/problem";
import type { Farm } from "#lib/domain/records/farm-settings";
import { LOSS, type LossDraft, leftOfBefore } from "#lib/domain/records/loss";
import type { FormValues } from "../../ui/form-values";

/** The button that says that none are left, whatever stands in the field. */
export const NONE_LEFT = "noneLeft";

/** Reads what is left of plants. A day to come is refused: it is written down as it was seen. */
export function readLoss(values: FormValues, farm: Farm, today: Day): Parsed<LossDraft> {
  const isAll = values.text(NONE_LEFT) !== "";
  const read = values.record(LOSS, farm, isAll ? { given: { plantsLeft: 0 } } : {});
  if (!read.ok) return read;
  const tooMany = leftOfBefore(read.parsed);
  if (tooMany) values.refuse("plantsLeft", tooMany);
  if (read.parsed.seenOn > today)
    values.refuse("seenOn", "this day is still to come: write it down when it has been seen");
  return tooMany || read.parsed.seenOn > today ? values.refusal() : read;
}
