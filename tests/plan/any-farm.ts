import fc from "fast-check";
import { monthDayOf } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Colour, StemAsk } from "#lib/domain/words";
import { anyHabit, anyOwnDays } from "../any-event-days";
import { anyTraits } from "../any-traits";
import { bed, booking, crop, curve, day, farm, planting, recipe, snapshot } from "../small-farm";
import { anyVarieties } from "./any-varieties";

/**
 * Farms in which everything meets: three crops that share roles, five varieties in four colours, a few beds some of them sprayed, and bookings
 * close together that want the same stems. fast-check makes them and shrinks the one that fails.
 */

const SEASON_YEAR = 2027;
export const anySeed = { seed: 20270612, numRuns: 200, unbiased: true } as const;

const colours = ["cream", "blush", "plum", "white"] as const;
const roles = ["focal", "secondary", "filler"] as const;
const someDay = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((date) => day(`2027-06-${String(date).padStart(2, "0")}`));
/** Lists of any length up to the most, and not mostly short ones as fast-check would draw them. */
const upTo = (maxLength: number) => ({ maxLength, size: "max" as const });
const palette: fc.Arbitrary<Colour[]> = fc.oneof(
  fc.constant<Colour[]>([]),
  fc.uniqueArray(fc.constantFrom(...colours), upTo(4)),
);
const sourced = (count: number) => ({ count, mark: "own" as const, source: null });

/** What stems are like, and to be had always and in any colour, or not in June, when all events are, or in some colours. */
const trade = fc.record({
  ...anyTraits,
  buyInMonths: fc.constantFrom<number[]>([], [5, 6], [7, 8]),
  buyInColours: fc.constantFrom<Colour[]>([], [], ["cream"], ["plum", "white"]),
});

/** Hold and field days may be fractions, and a hold may be shorter than the farm's lead days or longer than a fortnight. */
const crops = fc
  .tuple(
    fc.constantFrom(1, 3, 4.5, 7, 7, 7),
    fc.constantFrom(4, 5.5, 10),
    fc.constantFrom(4, 20, 31),
    fc.constantFrom(0, 1, 2, 3.5),
    fc.tuple(fc.boolean(), fc.boolean(), fc.boolean()),
    fc.record({
      stretch: fc.constantFrom(0, 0, 9, 12.5),
      dry: fc.constantFrom(0, 0, 9),
      upToC: fc.constantFrom(2, 5, 12),
      coldC: fc.constantFrom(0, 10),
      spare: fc.constantFrom(0, 0, 0.15, 0.2, 1 / 3),
    }),
    fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 80 }), fc.integer({ min: 1, max: 200 })),
    fc.tuple(trade, trade, trade),
  )
  .map(([holdOne, holdTwo, holdThree, field, tender, store, price, toBeHad]) => [
    crop({
      id: 1,
      roles: ["focal"],
      holdDays: sourced(holdOne),
      stretchDays: sourced(store.stretch),
      fieldDays: sourced(field),
      tender: tender[0],
      buyInCents: sourced(price[0]),
      ...toBeHad[0],
    }),
    crop({
      id: 2,
      roles: ["focal", "secondary"],
      usualRole: "secondary",
      holdDays: sourced(holdTwo),
      dryHoldDays: sourced(store.dry),
      holdUpToC: sourced(store.upToC),
      notColderC: sourced(store.coldC),
      cutSpareShare: sourced(store.spare),
      tender: tender[1],
      buyInCents: sourced(price[1]),
      ...toBeHad[1],
    }),
    crop({
      id: 3,
      roles: ["secondary", "filler"],
      usualRole: "filler",
      holdDays: sourced(holdThree),
      fieldDays: sourced(1),
      tender: tender[2],
      buyInCents: sourced(price[2]),
      ...toBeHad[2],
      bunchStems: sourced(7),
    }),
  ]);

const weekStems = fc.array(fc.constantFrom(0, 0.3, 1, 1.7), { minLength: 1, ...upTo(4) });
/** Shares by season of which one half-year, at least, differs from the other; or none. */
const saleable = fc.constantFrom<number[]>([], [0.8, 0.45, 0.9, 1], [1, 0.3, 0, 0.5]);
const curves = fc
  .tuple(someDay(1, 16), fc.integer({ min: 20, max: 40 }), weekStems, weekStems, weekStems, saleable)
  .map(([first, days, a, b, c, saleableBySeason]) => [
    curve({
      ...{ id: 1, cropId: 1, anchor: { kind: "day-of-year", firstCut: monthDayOf(first) } },
      ...{ stemsPerPlantByWeek: a, saleableBySeason },
    }),
    curve({ id: 2, cropId: 2, anchor: { kind: "days-after-planting", days }, stemsPerPlantByWeek: b }),
    curve({ id: 3, cropId: 3, anchor: { kind: "day-of-year", firstCut: monthDayOf(first) }, stemsPerPlantByWeek: c }),
    curve({ id: 4, cropId: 1, varietyId: 2, anchor: { kind: "days-after-planting", days }, stemsPerPlantByWeek: c }),
    ...[1, 2].map((varietyId) => curve({ id: 4 + varietyId, varietyId, plantingId: 1, stemsPerPlantByWeek: b })),
  ]);
const beds = fc
  .array(fc.oneof(fc.constant(null), fc.constant(null), fc.tuple(someDay(1, 14), someDay(15, 28))), {
    minLength: 3,
    maxLength: 3,
  })
  .map((sprays) =>
    sprays.map((spray, index) =>
      bed({ id: index + 1, noEntryFrom: spray?.[0] ?? null, noEntryUntil: spray?.[1] ?? null }),
    ),
  );

const plantings = fc
  .array(
    fc.record({
      bedId: fc.integer({ min: 1, max: 3 }),
      varietyId: fc.integer({ min: 1, max: 5 }),
      plantCount: fc.integer({ min: 0, max: 40 }),
      aliveShare: fc.constantFrom(1, 0.95, 0.6),
      gradeOutShare: fc.constantFrom(0, 0.1, 0.1, 1, null, null),
      seasonYear: fc.constantFrom(SEASON_YEAR, SEASON_YEAR, SEASON_YEAR, SEASON_YEAR - 1),
      treatment: fc.constantFrom("field" as const, "field" as const, "field" as const, "tunnel" as const),
    }),
    upTo(8),
  )
  .map((rows) =>
    rows.map((row, index) => planting({ id: index + 1, plantedOn: day(`${row.seasonYear}-05-10`), ...row })),
  );

const stemLine = fc.record({
  role: fc.constantFrom(...roles),
  crop: fc.constantFrom(
    { cropId: null, cropOnly: false },
    { cropId: 1, cropOnly: true },
    { cropId: 2, cropOnly: false },
  ),
  asks: fc.constantFrom<StemAsk[]>([], [], [], ["medium head", "small head"], ["long stem"], ["out of water"]),
  colours: palette,
  stemCount: fc.double({ min: 0.5, max: 30, noNaN: true }),
});

const bookings = fc
  .array(
    fc.record({
      status: fc.constantFrom(
        "confirmed" as const,
        "confirmed" as const,
        "held" as const,
        "enquiry" as const,
        "cancelled" as const,
      ),
      eventOn: someDay(9, 22),
      ownDays: anyOwnDays(4),
      palette,
      spareShare: fc.constantFrom(0, 0.1, 0.25),
      alternativeColours: palette,
      unacceptableColours: fc.constantFrom<Colour[]>([], [], [], [], ["white"], ["blush", "silver"]),
      unacceptableCropIds: fc.constantFrom<number[]>([], [], [], [2], [1, 3]),
      pieces: fc.array(
        fc.record({ recipeId: fc.constantFrom(1, 2), pieceCount: fc.integer({ min: 1, max: 6 }), colours: palette }),
        upTo(2),
      ),
      stemLines: fc.array(
        stemLine.map(({ crop, ...line }) => ({ ...line, ...crop })),
        upTo(3),
      ),
    }),
    upTo(8),
  )
  .map((rows) => rows.map(({ ownDays, ...row }, index) => booking({ id: index + 1, ...row, ...ownDays })));

const coolerStock = fc
  .array(
    fc.record({ varietyId: fc.integer({ min: 1, max: 5 }), cutOn: someDay(1, 25), stemCount: fc.nat(15) }),
    upTo(5),
  )
  .map((rows) => rows.map((row, index) => ({ id: index + 1, ...row })));

const settings = fc
  .record({
    pickingWeekdays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, ...upTo(5) }),
    habit: anyHabit(3),
    storeC: fc.constantFrom(null, null, null, null, 3, 9),
    storesDry: fc.boolean(),
    frostOn: someDay(10, 30),
  })
  .map(({ frostOn, habit, ...given }) => {
    const frostDay = monthDayOf(frostOn);
    return farm({ ...given, ...habit, frost: { ...farm().frost, firstAutumnP10: frostDay, firstAutumnP50: frostDay } });
  });

/** Any farm of 2027, with its early first frost inside the bloom, so that tender crops are cut short. */
export const anyFarm: fc.Arbitrary<Snapshot> = fc
  .record({ farm: settings, crops, varieties: anyVarieties, curves, beds, plantings, bookings, coolerStock })
  .map((given) =>
    snapshot({
      ...given,
      recipes: [
        recipe({ id: 1 }),
        recipe({
          id: 2,
          lines: [
            { role: "secondary", stemsPerPiece: 2.5, asks: [], colours: "palette" },
            { role: "filler", stemsPerPiece: 0.4, asks: [], colours: "any" },
            { role: "filler", stemsPerPiece: 0.7, asks: ["out of water"], colours: "palette-or-neutral" },
          ],
        }),
      ],
    }),
  );
