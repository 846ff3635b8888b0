import type { Bed } from "#lib/domain/records/bed";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Change, WhatIf } from "#lib/domain/what-if";
import { KEPT, winterBeds } from "#lib/plan/winter/beds";
import { FLAG_WORDS } from "#lib/plan/words/flag-words";
import { withChange } from "./with-change";

/** A bed that could stay in the ground, as it is on the farm and as it is in a what-if. `forbidden`: why keeping it is not advised. */
export type BedToggle = {
  readonly bed: Bed;
  readonly growing: readonly string[];
  readonly isKeptNow: boolean;
  readonly wouldBeKept: boolean;
  readonly forbidden: readonly string[];
};

/** Every bed that has two futures in the season, in order of name. A bed of which a part is kept counts as kept. */
export function bedToggles(now: Snapshot, wouldBe: Snapshot, seasonYear: number): BedToggle[] {
  const keptNow = keptBedIds(now, seasonYear);
  const keptThen = keptBedIds(wouldBe, seasonYear);
  const byName = new Intl.Collator("en", { numeric: true });
  return winterBeds(now, seasonYear)
    .map(({ bed, plantings, forbidden }) => ({
      bed,
      growing: [...new Set(plantings.map(({ kept }) => `${kept.crop.name} ${kept.variety.name}`))],
      isKeptNow: keptNow.has(bed.id),
      wouldBeKept: keptThen.has(bed.id),
      forbidden: forbidden.map((flag) => FLAG_WORDS[flag]),
    }))
    .sort((a, b) => byName.compare(a.bed.name, b.bed.name));
}

/** The changes with a bed kept or dug. Where the farm has it so already, the change that said otherwise is taken out instead. */
export function toggledBed(now: Snapshot, whatIf: WhatIf, bedId: number, isKept: boolean): readonly Change[] {
  const change: Change = { kind: isKept ? "bed-kept" : "bed-dug", bedId };
  const changed = withChange(whatIf.changes, change);
  return keptBedIds(now, whatIf.seasonYear).has(bedId) === isKept ? changed.slice(0, -1) : changed;
}

const keptBedIds = ({ plantings }: Snapshot, seasonYear: number): ReadonlySet<number> =>
  new Set(
    plantings
      .filter((planting) => planting.seasonYear === seasonYear && planting.treatment === KEPT)
      .map(({ bedId }) => bedId),
  );
