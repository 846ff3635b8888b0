import { describe, expect, test } from "vitest";
import { FROST_STATIONS } from "#lib/domain/catalogue/frost-stations";
import { SOURCES } from "#lib/domain/catalogue/sources";
import { dayInYear, daysBetween, type MonthDay } from "#lib/domain/day";
import { monthDaySchema } from "#lib/domain/day-schema";
import { frostDatesSchema } from "#lib/domain/records/farm-settings";

const station = (place: string) => {
  const found = FROST_STATIONS.find((row) => row.place.startsWith(place));
  if (!found) throw new RangeError(`no station at ${place}`);
  return found;
};

const dated = (text: string | null): MonthDay => monthDaySchema.parse(text);

/**
 * Days between the 50 % dates of published tables, our arithmetic, done from the tables and not from the catalogue: a slip of the pen shows. 32 F
 * tables, in the sense of the US climate normals (NCEI-FREEZE, the definition:
 * http://wdcosf.fh-potsdam.de/resources/gcmd-22b3623a-66c6-4616-8a6a-139ce119f672/): in spring p10 is late, in autumn p10 is early.
 */
const PUBLISHED = [
  {
    place: "Georgetown",
    source: "UDEL-FROST", // http://www.rec.udel.edu/misc/Frost%20dates.htm (data to 1970: an arithmetic check, not a current climate)
    seasonDays: 174,
  },
  {
    place: "Albany",
    source: "NCEI-ALB", // US normals 1991-2020, USW00014735, read as quoted in public code, not at the source
    seasonDays: 171,
  },
  {
    place: "Frankfort",
    source: "NWS-FRK", // https://www.weather.gov/lmk/frankfort_freeze_info
    seasonDays: 188,
  },
  {
    place: "Louisville",
    source: "NWS-SDF", // https://www.weather.gov/lmk/louisville_freeze_info
    seasonDays: 215,
  },
] as const;

describe.each(PUBLISHED)("$place ($source)", ({ place, source, seasonDays }) => {
  const { frost, origin } = station(place);

  test(`${seasonDays} days lie between the 50 % dates, in a leap year too`, () => {
    expect([origin.source, Object.keys(SOURCES).includes(source)]).toEqual([source, true]);
    for (const year of [2027, 2028])
      expect(
        daysBetween(dayInYear(dated(frost.lastSpringP50), year), dayInYear(dated(frost.firstAutumnP50), year)),
      ).toBe(seasonDays);
  });
});

describe("order of the dates", () => {
  const complete = FROST_STATIONS.filter(({ frost }) => Object.values(frost).every((date) => date !== null));

  test("two stations have all six dates", () => {
    expect(complete.map(({ place }) => place)).toEqual(["Albany, New York", "Georgetown, Delaware"]);
  });

  test.each(complete)(
    "$place: spring runs from 90 % to 10 %, autumn from 10 % to 90 %, and a farm may take it",
    ({ frost }) => {
      const order = [
        frost.lastSpringP90,
        frost.lastSpringP50,
        frost.lastSpringP10,
        frost.firstAutumnP10,
        frost.firstAutumnP50,
        frost.firstAutumnP90,
      ];
      expect(order).toEqual([...order].sort());
      expect(frostDatesSchema.safeParse(frost).success).toBe(true);
    },
  );
});

/**
 * The trap: this table uses the same labels with spring the other way round, 10 % meaning that the last freeze has already happened.
 * NWS-ILM, Wilmington, North Carolina, since 1950: https://www.weather.gov/ilm/freezeWilmington
 */
describe("Wilmington, whose spring dates run the other way (NWS-ILM)", () => {
  const asPrinted = {
    firstAutumnP10: "11-01",
    firstAutumnP50: "11-17",
    firstAutumnP90: "12-03",
    lastSpringP10: "02-26",
    lastSpringP50: "03-18",
    lastSpringP90: "04-06",
  };

  test("taken as printed it is refused, and the message says which dates", () => {
    const parsed = frostDatesSchema.safeParse(asPrinted);
    expect(parsed.success).toBe(false);
    expect(parsed.error?.issues.map(({ path }) => path)).toEqual([["lastSpringP50"]]);
  });

  test("turned round it is accepted", () => {
    const turned = { ...asPrinted, lastSpringP10: asPrinted.lastSpringP90, lastSpringP90: asPrinted.lastSpringP10 };
    expect(frostDatesSchema.safeParse(turned).success).toBe(true);
  });

  test("it is not among the examples", () => {
    expect(FROST_STATIONS.filter(({ place }) => place.startsWith("Wilmington"))).toEqual([]);
  });
});
