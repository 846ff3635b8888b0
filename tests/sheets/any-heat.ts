import fc from "fast-check";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { BY_WEEKS } from "#lib/domain/records/bloom-end";
import type { Anchor } from "#lib/domain/records/curve";
import { BY_CALENDAR } from "#lib/domain/records/heat";
import { anyLearned } from "../any-review";
import { monthDay } from "../small-farm";

const degrees = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((number) => number + 0);

/** A curve's clock of warmth of every kind, or none. */
const anyHeat = fc.oneof(
  fc.constant(BY_CALENDAR),
  fc.record({
    heatBaseC: degrees(-10, 20),
    heatCeilingC: degrees(20.5, 40),
    heatLimitC: fc.option(degrees(40.5, 60)),
    heatFrom: fc.constantFrom("01-01", "05-25").map(monthDay),
    heatPlace: fc.option(fc.constantFrom(...CLIMATE_STATIONS.map(({ station }) => station))),
  }),
);

/** What ends a bloom. */
const anyEnd = fc.oneof(
  fc.constant(BY_WEEKS),
  fc.record({ ends: fc.constant("heat" as const), endHighC: degrees(10, 50) }),
  fc.constant({ ends: "frost" as const, endHighC: null }),
);

/** When a curve says that the first stem is cut. */
export const anyAnchor: fc.Arbitrary<Anchor> = fc.oneof(
  fc.record({ kind: fc.constant("day-of-year" as const), firstCut: fc.constantFrom("06-07", "10-18").map(monthDay) }),
  fc.record({ kind: fc.constant("days-after-planting" as const), days: fc.nat(1000) }),
);

/** Shares fit to sell of four seasons, or none. */
const anySaleable = fc.oneof(fc.constant<number[]>([]), fc.array(degrees(0, 1), { minLength: 4, maxLength: 4 }));

/** A curve's clock, what ends it, and what its stems depend on. */
export const anyCourse = fc
  .tuple(
    anyHeat,
    anyEnd,
    fc.array(degrees(0, 2), { maxLength: 4 }),
    fc.option(fc.nat(200)),
    fc.option(degrees(0, 1)),
    fc.integer({ min: -365, max: 365 }),
    anyLearned,
    anySaleable,
  )
  .map(([heat, end, shareByAge, sowingDays, lateLossShare, laterDays, learned, saleableBySeason]) => ({
    ...heat,
    ...end,
    shareByAge,
    sowingDays,
    lateLossShare,
    laterDays,
    learned,
    saleableBySeason,
  }));

/** How a planting began, how old it is, and what is said of it for its season alone. */
export const anyAge = {
  sown: fc.boolean(),
  ageSeasons: fc.option(fc.integer({ min: 1, max: 100 })),
  daysLate: fc.option(fc.integer({ min: -120, max: 120 })),
  yieldFactor: fc.option(fc.double({ min: 0, max: 5, noNaN: true }).map((factor) => factor + 0)),
};
