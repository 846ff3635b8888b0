import type { Snapshot } from "#lib/domain/snapshot";
import { type WinterWorksheet, winterWorksheet } from "#lib/plan/winter/worksheet";
import { bedsKeptNow } from "#lib/plan/words/keep-board";

/** The worksheet of the beds as the farm has them: kept where any of the bed is kept, dug otherwise. */
export const worksheetOf = (snapshot: Snapshot, seasonYear: number): WinterWorksheet =>
  winterWorksheet(
    snapshot,
    seasonYear,
    bedsKeptNow(snapshot, seasonYear).map(({ bed }) => bed.id),
  );
