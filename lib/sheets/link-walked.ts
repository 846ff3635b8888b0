import type { BudLookRecord, LossRecord } from "#lib/domain/farm-records";
import { leftOfBefore } from "#lib/domain/records/loss";
import { identityOf } from "./known-farm";
import { varietyOf } from "./link-ground";
import type { SeasonNames } from "./link-season";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

/** What these rows name alike. */
type Walked = Pick<RowOf<"buds">, "bed" | "crop" | "variety" | "colour">;
type GroundNames = Omit<SeasonNames, "owners">;

/** Looks at buds in known beds. There is one for each day, bed and variety. */
export const linkBudLooks = (sheet: SheetRows<RowOf<"buds">>, names: GroundNames): SheetRows<BudLookRecord> =>
  linkWalked({ name: "buds", once: "day, bed and variety" }, sheet, names);

/** What was left of plants in known beds. There is one count for each day, bed, variety and cause. */
export const linkLosses = (sheet: SheetRows<RowOf<"losses">>, names: GroundNames): SheetRows<LossRecord> =>
  linkWalked(
    { name: "losses", once: "day, bed, variety and cause" },
    linkRows(sheet, (draft, say) => {
      const message = leftOfBefore(draft);
      if (message) say("plants_left", message);
      return message ? null : draft;
    }),
    names,
  );

/** What was seen on a walk along known beds, each row once. */
function linkWalked<Row extends Walked>(
  { name, once }: { readonly name: "buds" | "losses"; readonly once: string },
  sheet: SheetRows<Row>,
  { beds, crops, varieties }: GroundNames,
) {
  const seen = new Map<string, Place>();
  return linkRows(sheet, (draft, say, { place }) => {
    const bed = beds.find(draft.bed);
    if (!bed.ok) say("bed", bed.message);
    const variety = varietyOf(draft, crops, varieties, say);
    if (!bed.ok || !variety) return null;
    const record = { ...draft, ...variety, bed: bed.name };
    const identity = identityOf(name, record);
    const earlier = seen.get(identity);
    if (earlier) say(null, `the same ${once} stand on ${placeInWords(earlier)}: keep one of the two rows`);
    else seen.set(identity, place);
    varieties.enter(variety, place);
    return record;
  });
}
