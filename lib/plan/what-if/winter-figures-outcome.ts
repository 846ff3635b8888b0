import type { Snapshot } from "#lib/domain/snapshot";
import { withWinterFiguresTaken } from "#lib/domain/winter-figures";
import { winterBeds } from "#lib/plan/winter/beds";
import { keptBedTest } from "#lib/plan/winter/kept-beds";

/** What the winter of a season costs with the candidate beds kept and dug as the farm has them: with its figures, and with the built-in ones of today taken. Cents. */
export type WinterFiguresOutcome = { readonly nowCents: number; readonly thenCents: number };

export const winterFiguresOutcome = (snapshot: Snapshot, seasonYear: number): WinterFiguresOutcome => ({
  nowCents: winterCents(snapshot, seasonYear),
  thenCents: winterCents({ ...snapshot, farm: withWinterFiguresTaken(snapshot.farm) }, seasonYear),
});

function winterCents(snapshot: Snapshot, seasonYear: number): number {
  const isKept = keptBedTest(snapshot);
  return winterBeds(snapshot, seasonYear).reduce((sum, bed) => sum + (isKept(bed) ? bed.keep : bed.dig).cents, 0);
}
