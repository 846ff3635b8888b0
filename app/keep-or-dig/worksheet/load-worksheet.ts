import type { Day } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { bedsKeptNow } from "#lib/plan/winter/kept-beds";
import { type WinterWorksheet, winterWorksheet } from "#lib/plan/winter/worksheet";

/** The worksheet from today on of the beds as the farm has them: kept where any of the bed is kept, dug otherwise. */
export const worksheetOf = (snapshot: Snapshot, seasonYear: number, today: Day): WinterWorksheet =>
  winterWorksheet(
    snapshot,
    seasonYear,
    bedsKeptNow(snapshot, seasonYear).map(({ bed }) => bed.id),
    today,
  );
