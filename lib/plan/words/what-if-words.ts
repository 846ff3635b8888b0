import { inShort, monthDayInShort } from "#lib/domain/day";
import { MEASURES, type Measure, type Measures, PLAIN, shown } from "#lib/domain/measures";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Change, Resource } from "#lib/domain/what-if";
import { TREATMENT_WORDS } from "#lib/domain/words";
import { countOf } from "./numbers";

/** The measure that each thing at hand is shown and typed in, by the farm's units. */
export const atHandMeasure = ({ volume, area }: Measures): Record<Resource, Measure> => ({
  leaves: volume,
  tarp: area,
  hours: { ...PLAIN, word: "hours" },
});

const OF_WHAT: Record<Resource, string> = { leaves: " of leaves", tarp: " of tarp", hours: "" };

/**
 * A change as a grower would say it: "Keep bed S4 in the ground"; what is at hand in the units that the farm types in. What is no longer on
 * the farm is called so.
 */
export function changeInWords(change: Change, snapshot: Snapshot): string {
  const words = wordsFor(snapshot);
  switch (change.kind) {
    case "bed-kept":
      return `Keep ${words.bed(change.bedId)} in the ground`;
    case "bed-dug":
      return `Dig ${words.bed(change.bedId)} and replant it in spring`;
    case "frost-moved":
      return `First frost on ${monthDayInShort(change.firstFrost)}`;
    case "season-shifted":
      return `${words.crop(change.cropId)} ${lateness(change.days)}`;
    case "yield-scaled":
      return `${words.crop(change.cropId)} at ${Math.round(change.factor * 100)} % of the usual yield`;
    case "booking-added":
      return `Take a booking: ${change.booking.client}, ${inShort(change.booking.eventOn)}`;
    case "booking-moved":
      return `Move ${words.booking(change.bookingId)} to ${inShort(change.eventOn)}`;
    case "booking-dropped":
      return `Without ${words.booking(change.bookingId)}`;
    case "status-set":
      return `Count ${words.booking(change.bookingId)} as ${change.status}`;
    case "planting-added": {
      const { plantCount, varietyId, bedId, treatment, plantedOn } = change.planting;
      const what = `${countOf(plantCount, "plant")} of ${words.variety(varietyId)}`;
      return `Plant ${what} in ${words.bed(bedId)} on ${inShort(plantedOn)}, ${TREATMENT_WORDS[treatment]}`;
    }
    case "planting-moved": {
      const to = change.bedId === null ? "" : ` to ${words.bed(change.bedId)}`;
      const on = change.plantedOn === null ? "" : `, planted on ${inShort(change.plantedOn)}`;
      return `Move ${words.planting(change.plantingId)}${to}${on}`;
    }
    case "planting-removed":
      return `Without ${words.planting(change.plantingId)}`;
    case "at-hand-set": {
      const measure = atHandMeasure(MEASURES[snapshot.farm.units])[change.resource];
      const unit = `${measure.word}${OF_WHAT[change.resource]}`;
      return change.atHand === null ? `As many ${unit} as wanted` : `${shown(measure, change.atHand)} ${unit} at hand`;
    }
  }
}

const lateness = (days: number): string =>
  days === 0 ? "on time" : `${countOf(Math.abs(days), "day")} ${days > 0 ? "late" : "early"}`;

function wordsFor({ beds, crops, varieties, plantings, bookings }: Snapshot) {
  const bed = (id: number) => {
    const found = beds.find((row) => row.id === id);
    return found ? `bed ${found.name}` : "a bed no longer on the farm";
  };
  const crop = (id: number | null) =>
    id === null ? "Every crop" : (crops.find((row) => row.id === id)?.name ?? "A crop no longer on the farm");
  const variety = (id: number) => {
    const found = varieties.find((row) => row.id === id);
    return found ? `${crop(found.cropId)} ${found.name}` : "a variety no longer on the farm";
  };
  const planting = (id: number) => {
    const found = plantings.find((row) => row.id === id);
    return found ? `${variety(found.varietyId)} in ${bed(found.bedId)}` : "a planting no longer on the farm";
  };
  const booking = (id: number) => {
    const found = bookings.find((row) => row.id === id);
    return found ? `the booking of ${found.client}, ${inShort(found.eventOn)}` : "a booking no longer on the farm";
  };
  return { bed, crop, variety, planting, booking };
}
