import { inFull, inShort, monthDayInShort } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import { MEASURES, type Measure, shown } from "#lib/domain/measures";
import type { Booking } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Planting, PlantingDraft } from "#lib/domain/records/planting";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { TREATMENT_WORDS } from "#lib/domain/words";
import type { Adoption } from "#lib/plan/what-if/adoption";
import { countOf } from "./numbers";
import { ownSeasonInWords } from "./own-season-words";
import { atHandMeasure } from "./what-if-words";

/** Every thing that adopting writes, a sentence each, from what it is to what it becomes. Empty when nothing would be written. */
export function adoptionInWords({ farm, plantings, bookings }: Adoption, now: Snapshot): string[] {
  const named = plantingNamer(now);
  const plantingOf = new ById("planting", now.plantings);
  const bookingOf = new ById("booking", now.bookings);
  return [
    ...(farm ? settingsInWords(now.farm, farm) : []),
    ...plantings.changed.flatMap((row) => plantingInWords(plantingOf.get(row.id), row, named, now)),
    ...seasonsInWords(plantings.changed, plantingOf),
    ...plantings.removedIds.map((id) => `${named(plantingOf.get(id))}: removed`),
    ...plantings.added.map(
      (row) =>
        `${named(row)}: ${countOf(row.plantCount, "plant")} added, planted on ${inShort(row.plantedOn)}, ${TREATMENT_WORDS[row.treatment]}`,
    ),
    ...bookings.changed.map((row) => bookingInWords(bookingOf.get(row.id), row)),
    ...bookings.removedIds.map((id) => `Booking of ${bookingOf.get(id).client}: removed`),
    ...bookings.added.map(
      ({ client, eventOn, status }) => `Booking of ${client}, ${inFull(eventOn)}: added as ${status}`,
    ),
  ];
}

/** How many beds the name of the change names before it says how many more there are. */
const NAMED_COUNT = 8;

/** "keep beds D1, D4 and D7 in the ground", as the history of changes calls it. */
export function keptBedsInWords({ beds }: Snapshot, keptBedIds: readonly number[]): string {
  const names = beds.filter(({ id }) => keptBedIds.includes(id)).map(({ name }) => name);
  if (names.length === 0) return "dig every bed";
  const more = names.length - NAMED_COUNT;
  const named = [...names.slice(0, NAMED_COUNT), ...(more > 0 ? [`${more} more`] : [])];
  return `keep ${names.length === 1 ? "bed" : "beds"} ${allOf(named)} in the ground`;
}

function settingsInWords(before: Farm, after: Farm): string[] {
  const measures = atHandMeasure(MEASURES[before.units]);
  const amount = (measure: Measure, stored: number | null) =>
    stored === null ? "as much as wanted" : `${shown(measure, stored)} ${measure.word}`;
  const changes: readonly (readonly [what: string, was: string, becomes: string])[] = [
    ["First autumn frost, early, median and late", frostInWords(before), frostInWords(after)],
    [
      "Leaves at hand",
      amount(measures.leaves, before.winter.leafCubicMetresAtHand),
      amount(measures.leaves, after.winter.leafCubicMetresAtHand),
    ],
    [
      "Tarp at hand",
      amount(measures.tarp, before.winter.tarpSquareMetresAtHand),
      amount(measures.tarp, after.winter.tarpSquareMetresAtHand),
    ],
    [
      "Hours at hand",
      amount(measures.hours, before.winter.hoursAtHand),
      amount(measures.hours, after.winter.hoursAtHand),
    ],
  ];
  return changes
    .filter(([, was, becomes]) => was !== becomes)
    .map(([what, was, becomes]) => `${what}: ${was} → ${becomes}`);
}

const frostInWords = ({ frost }: Farm): string =>
  [frost.firstAutumnP10, frost.firstAutumnP50, frost.firstAutumnP90].map(monthDayInShort).join(", ");

function plantingNamer({ beds, varieties, crops }: Snapshot): (row: PlantingDraft) => string {
  const bedOf = new ById("bed", beds);
  const varietyOf = new ById("variety", varieties);
  const cropOf = new ById("crop", crops);
  return ({ bedId, varietyId }) => {
    const { cropId, name } = varietyOf.get(varietyId);
    return `${cropOf.get(cropId).name} ${name} in bed ${bedOf.get(bedId).name}`;
  };
}

function plantingInWords(
  was: Planting,
  row: Planting,
  named: (row: PlantingDraft) => string,
  { beds }: Snapshot,
): string[] {
  const parts = [
    was.treatment !== row.treatment && `${TREATMENT_WORDS[was.treatment]} → ${TREATMENT_WORDS[row.treatment]}`,
    was.plantedOn !== row.plantedOn && `planted on ${inFull(was.plantedOn)} → ${inFull(row.plantedOn)}`,
    was.bedId !== row.bedId && `moved to bed ${new ById("bed", beds).get(row.bedId).name}`,
  ].filter((part) => part !== false);
  return parts.length === 0 ? [] : [`${named(was)}: ${parts.join("; ")}`];
}

/** What is said of the season of plantings, those of which the same is said together: "12 plantings: 10 days late, this season only". */
function seasonsInWords(changed: readonly Planting[], before: ById<Planting>): string[] {
  const said = new Map<string, number>();
  for (const row of changed) {
    const was = before.get(row.id);
    if (was.daysLate === row.daysLate && was.yieldFactor === row.yieldFactor) continue;
    const words = ownSeasonInWords(row) ?? "as the curve says again";
    said.set(words, (said.get(words) ?? 0) + 1);
  }
  return [...said].map(([words, count]) => `${countOf(count, "planting")}: ${words}, this season only`);
}

function bookingInWords(was: Booking, row: Booking): string {
  const parts = [
    was.eventOn !== row.eventOn && `${inFull(was.eventOn)} → ${inFull(row.eventOn)}`,
    was.status !== row.status && `${was.status} → ${row.status}`,
    was.promises.length > 0 &&
      row.promises.length === 0 &&
      (row.status === "confirmed" ? "promised anew what the plan then covers" : "its promise is over"),
  ].filter((part) => part !== false);
  return `Booking of ${was.client}: ${parts.join("; ")}`;
}
