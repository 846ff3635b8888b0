import { MEASURES, PERCENT } from "#lib/domain/measures";
import type { Parsed } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Change, changeSchema, RESOURCES } from "#lib/domain/what-if";
import { atHandMeasure } from "#lib/plan/words/what-if-words";
import type { FormValues } from "../../ui/form-values";
import { readBookingDraft } from "./booking-draft-values";
import { chosen } from "./chosen";
import { readPlantingDraft } from "./planting-draft-values";

/** Parses the form of a change of any kind; every problem stands at the name of its field. */
export function readChange(values: FormValues, farm: Snapshot, seasonYear: number): Parsed<Change> {
  const candidate = candidateOf(values, farm, seasonYear);
  return candidate === null ? values.refusal() : values.parse(changeSchema, candidate);
}

/** What the schema is to take; null when the form was refused by itself. */
function candidateOf(values: FormValues, farm: Snapshot, seasonYear: number): unknown {
  const kind = values.text("kind");
  switch (kind) {
    case "bed-kept":
    case "bed-dug":
      return { kind, bedId: chosen(values, "bedId", farm.beds, "a bed") };
    case "frost-moved":
      return { kind, firstFrost: monthDayIn(values, "firstFrost", seasonYear) };
    case "season-shifted":
      return { kind, days: daysLater(values), cropId: cropOrAll(values, farm) };
    case "yield-scaled": {
      const factor = values.number("factor", { measure: PERCENT, range: "a percentage from 0 to 500" });
      return { kind, factor, cropId: cropOrAll(values, farm) };
    }
    case "booking-added": {
      const draft = readBookingDraft(values, farm);
      return draft && { kind, booking: draft };
    }
    case "booking-moved":
      return { kind, bookingId: booking(values, farm), eventOn: values.text("eventOn") };
    case "booking-dropped":
      return { kind, bookingId: booking(values, farm) };
    case "status-set":
      return { kind, bookingId: booking(values, farm), status: values.text("status") };
    case "planting-added": {
      const planting = readPlantingDraft(values, farm, seasonYear);
      return planting && { kind, planting };
    }
    case "planting-moved": {
      const bedId = values.text("bedId") === "" ? null : chosen(values, "bedId", farm.beds, "a bed");
      const plantedOn = values.textOrNull("plantedOn");
      if (bedId === null && plantedOn === null) values.refuse("plantedOn", "say which day, which bed, or both");
      return { kind, plantingId: planting(values, farm), bedId, plantedOn };
    }
    case "planting-removed":
      return { kind, plantingId: planting(values, farm) };
    case "at-hand-set":
      return { kind, resource: values.text("resource"), atHand: atHand(values, farm) };
    default:
      return { kind };
  }
}

const booking = (values: FormValues, { bookings }: Snapshot) => chosen(values, "bookingId", bookings, "a booking");
const planting = (values: FormValues, { plantings }: Snapshot) => chosen(values, "plantingId", plantings, "a planting");

const cropOrAll = (values: FormValues, { crops }: Snapshot): number | null =>
  values.text("cropId") === "" ? null : chosen(values, "cropId", crops, "a crop, or every crop");

/** Days later; typed without a sign, beside "late" or "early". */
function daysLater(values: FormValues): number {
  const days = values.number("days");
  if (days < 0) values.refuse("days", "write the days without a sign, and choose early or late");
  if (days > 60) values.refuse("days", "at most 60 days");
  return values.text("direction") === "early" ? 0 - days : days;
}

/** The day of the year of a calendar day of the season. */
function monthDayIn(values: FormValues, name: string, seasonYear: number): string {
  const typed = values.text(name);
  if (!typed.startsWith(`${seasonYear}-`)) values.refuse(name, `choose a day in ${seasonYear}`);
  return typed.slice(5);
}

/** In metres whatever it was typed in; left empty, as much as wanted. */
function atHand(values: FormValues, { farm }: Snapshot): number | null {
  const resource = RESOURCES.find((word) => word === values.text("resource"));
  if (!resource) {
    values.refuse("resource", "choose leaves, tarp or hours");
    return null;
  }
  return values.numberOrNull("atHand", { measure: atHandMeasure(MEASURES[farm.units])[resource] });
}
