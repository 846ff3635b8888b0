import type { MonthDay } from "#lib/domain/day";
import { monthDaySchema } from "#lib/domain/day-schema";
import type { FrostDates } from "#lib/domain/records/farm-settings";
import type { Origin } from "#lib/domain/sourced";
import { publishedIn, publishedSecondHandIn } from "./marked";

/** Published frost dates of a place; null where the source gives no date. */
type StationFrost = { readonly [field in keyof FrostDates]: MonthDay | null };

/**
 * A weather station's frost dates at 32 F, in the sense of {@link FrostDates} (US climate normals): in spring the 10 % date is late, in
 * autumn it is early. An example to start from: a farm's own ground can differ by weeks.
 */
export type FrostStation = {
  readonly place: string;
  /** The years the dates rest on. */
  readonly years: string;
  readonly frost: StationFrost;
  readonly origin: Origin;
  readonly note: string;
};

/** The 10, 50 and 90 % dates of a season, "MM-DD", an empty text where there is none. */
type Dates = readonly [p10: string, p50: string, p90: string];

const dateOrNull = (text: string): MonthDay | null => (text ? monthDaySchema.parse(text) : null);

const frost = (spring: Dates, autumn: Dates): StationFrost => ({
  firstAutumnP10: dateOrNull(autumn[0]),
  firstAutumnP50: dateOrNull(autumn[1]),
  firstAutumnP90: dateOrNull(autumn[2]),
  lastSpringP10: dateOrNull(spring[0]),
  lastSpringP50: dateOrNull(spring[1]),
  lastSpringP90: dateOrNull(spring[2]),
});

/** Stations in order of place. Tables whose spring dates run the other way (10 % early) are left out on purpose. */
export const FROST_STATIONS: readonly FrostStation[] = [
  {
    place: "Albany, New York",
    years: "1991–2020",
    frost: frost(["05-11", "04-27", "04-16"], ["10-03", "10-15", "11-01"]),
    origin: publishedSecondHandIn("NCEI-ALB"),
    note: "Read as quoted elsewhere, not at the source.",
  },
  {
    place: "Frankfort, Kentucky",
    years: "1981–2010",
    frost: frost(["", "04-17", ""], ["", "10-22", ""]),
    origin: publishedIn("NWS-FRK"),
    note: "Only the normal date is given; taken as the 50 % date.",
  },
  {
    place: "Georgetown, Delaware",
    years: "up to 1970",
    frost: frost(["05-10", "04-25", "04-10"], ["10-02", "10-16", "10-30"]),
    origin: publishedIn("UDEL-FROST"),
    note: "A complete table, but an old climate.",
  },
  {
    place: "Louisville, Kentucky",
    years: "1981–2010",
    frost: frost(["", "04-03", ""], ["", "11-04", ""]),
    origin: publishedIn("NWS-SDF"),
    note: "Only the normal date is given; taken as the 50 % date.",
  },
];
