import fc from "fast-check";
import { addDays, type Day, type MonthDay, parseDay, toDay } from "#lib/domain/day";
import { BED_FLAGS } from "#lib/domain/records/bed";
import { PLANTING_FLAGS } from "#lib/domain/records/planting";
import { MARKS } from "#lib/domain/sourced";
import { COLOURS, LINE_COLOURS, ROLES, SHAPES, STATUSES, TREATMENTS } from "#lib/domain/words";
import { anyOwnDays } from "../any-event-days";
import { anyFinalCount } from "../any-final-count";
import { anyLearned } from "../any-review";
import { anyStore } from "../any-store";
import { anyAsks, anyTraits } from "../any-traits";
import { anyAge } from "../sheets/any-heat";
import { farm } from "../small-farm";

/** Whatever the domain allows, the odd ends of it included: any letters, all digits of a number, lists with the same thing twice. */

const text = fc.string({ unit: "binary", maxLength: 12 });
export const name = fc
  .string({ unit: "binary", minLength: 1, maxLength: 12 })
  .filter((letters) => letters.trim() === letters);
// Adding 0 turns the negative zero, which SQLite does not keep apart, into the plain one.
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((drawn) => drawn + 0);
export const share = number(0, 1);
const above0 = (max: number) => fc.double({ min: 0, minExcluded: true, max, noNaN: true });
const cents = fc.integer({ min: 0, max: 100_000_000 });

export const day: fc.Arbitrary<Day> = fc.integer({ min: 8000, max: 80_000 }).map(toDay);
const monthDay: fc.Arbitrary<MonthDay> = fc
  .integer({ min: 0, max: 364 })
  .map((days) => addDays(parseDay("2027-01-01"), days).slice(5) as MonthDay);
const colours = fc.array(fc.constantFrom(...COLOURS), { maxLength: 4 });
const origin = fc.record({ mark: fc.constantFrom(...MARKS), source: fc.option(text) });
const sourced = (count: fc.Arbitrary<number>) =>
  fc.record({ count, mark: fc.constantFrom(...MARKS), source: fc.option(text) });

export const cropDraft = fc.record({
  name,
  scientific: text,
  shape: fc.constantFrom(...SHAPES),
  roles: fc.array(fc.constantFrom(...ROLES), { minLength: 1, maxLength: 4 }),
  usualRole: fc.constantFrom(...ROLES),
  ...{ ...anyTraits, traitsOrigin: origin },
  ...{ tender: fc.boolean(), overwinters: fc.boolean() },
  holdDays: sourced(number(0, 120)),
  ...anyStore((least, most) => sourced(number(least, most))),
  fieldDays: sourced(number(0, 60)),
  ...{ bunchStems: sourced(fc.integer({ min: 1, max: 100 })), bucketStems: sourced(fc.integer({ min: 1, max: 500 })) },
  buyInCents: sourced(fc.integer({ min: 1, max: 100_000 })),
  buyInColours: colours,
  buyInMonths: fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: 4 }),
  tradeOrigin: origin,
  cutStage: text,
  cautions: fc.array(text, { maxLength: 3 }),
});

export const curveDraft = fc.record({
  treatment: fc.constantFrom(...TREATMENTS),
  anchor: fc.oneof(
    fc.record({ kind: fc.constant("day-of-year" as const), firstCut: monthDay }),
    fc.record({ kind: fc.constant("days-after-planting" as const), days: fc.integer({ min: 0, max: 1000 }) }),
  ),
  stemsPerPlantByWeek: fc.array(number(0, 1000), { minLength: 1, maxLength: 5 }),
  firstCutSpreadDays: number(0, 60),
  yieldSpread: number(0, 2),
  timingOrigin: origin,
  yieldOrigin: origin,
  note: text,
  laterDays: fc.integer({ min: -365, max: 365 }),
  learned: anyLearned,
  sowingDays: fc.option(fc.integer({ min: 0, max: 200 })),
  lateLossShare: fc.option(number(0, 1)),
  shareByAge: fc.array(number(0, 2), { maxLength: 4 }),
  saleableBySeason: fc.array(number(0, 1), { minLength: 4, maxLength: 4 }),
  ends: fc.constant("heat" as const),
  endHighC: number(10, 50),
  heatBaseC: fc.constant(4.4),
  heatCeilingC: number(5, 40),
  heatLimitC: fc.option(number(41, 60)),
  heatFrom: monthDay,
  heatPlace: fc.constantFrom(null, "Richmond, Virginia"),
  heatOrigin: origin,
});

export const recipeDraft = fc.record({
  name,
  unit: name,
  lines: fc.array(
    fc.record({
      role: fc.constantFrom(...ROLES),
      // Pieces, stems in one and lines stay together below what a booking may ask for.
      stemsPerPiece: above0(100),
      asks: anyAsks,
      colours: fc.constantFrom(...LINE_COLOURS),
    }),
    { minLength: 1, maxLength: 5 },
  ),
  origin: text,
});

export const bedDraft = fc
  .record({
    name,
    lengthMetres: above0(1000),
    widthMetres: above0(100),
    flags: fc.array(fc.constantFrom(...BED_FLAGS), { maxLength: 3 }),
    spray: fc.option(fc.tuple(day, fc.integer({ min: 1, max: 90 }))),
    note: text,
  })
  .map(({ spray, ...bed }) => ({
    ...bed,
    noEntryFrom: spray ? spray[0] : null,
    noEntryUntil: spray ? addDays(spray[0], spray[1]) : null,
  }));

export const plantingDraft = fc.record({
  seasonYear: fc.integer({ min: 1990, max: 2200 }),
  treatment: fc.constantFrom(...TREATMENTS),
  plantedOn: day,
  plantCount: fc.integer({ min: 0, max: 1_000_000 }),
  ...anyAge,
  aliveShare: share,
  gradeOutShare: fc.option(share),
  winterSurvivalShare: fc.option(share),
  flags: fc.array(fc.constantFrom(...PLANTING_FLAGS), { maxLength: 3 }),
});

export const stockDraft = fc.record({ cutOn: day, stemCount: fc.integer({ min: 0, max: 1_000_000 }) });

/** A cut whose ids are places in a list, to be looked up with `among`. */
export const cutDraft = fc
  .record({
    cutOn: day,
    bedId: fc.nat(),
    varietyId: fc.nat(),
    bookingId: fc.option(fc.nat()),
    stemsCut: fc.integer({ min: 0, max: 1_000_000 }),
    stemsAsked: fc.option(fc.integer({ min: 0, max: 1_000_000 })),
    ...{ restStands: fc.boolean(), isGraded: fc.boolean() },
  })
  .map(({ isGraded, ...cut }) => ({ ...cut, goodStems: isGraded ? Math.floor(cut.stemsCut * 0.9) : null }));

/** A booking whose ids of recipes and crops are places in a list, to be looked up with `among`. */
export const bookingDraft = fc
  .record({
    ownDays: anyOwnDays(14),
    client: name,
    status: fc.constantFrom(...STATUSES),
    lapsesAfter: fc.option(day),
    eventOn: day,
    palette: colours,
    alternativeColours: colours,
    unacceptableColours: colours,
    spareShare: share,
    takenOn: fc.option(day),
    priceCents: fc.option(fc.nat(100_000_000)),
    ...anyFinalCount(day),
    unacceptableCropIds: fc.array(fc.nat(), { maxLength: 4 }),
    pieces: fc.array(fc.record({ recipeId: fc.nat(), pieceCount: above0(100), colours }), { maxLength: 4 }),
    stemLines: fc.array(
      fc
        .record({
          role: fc.constantFrom(...ROLES),
          cropId: fc.option(fc.nat()),
          ...{ cropOnly: fc.boolean(), asks: anyAsks, colours },
          stemCount: above0(10_000),
        })
        .map((line) => ({ ...line, cropOnly: line.cropOnly && line.cropId !== null })),
      { maxLength: 4 },
    ),
    promises: fc.array(
      fc.record({
        role: fc.constantFrom(...ROLES),
        cropId: fc.option(fc.nat()),
        ...{ cropOnly: fc.boolean(), asks: anyAsks, colours },
        stemCount: fc.integer({ min: 1, max: 1_000_000 }),
      }),
      { maxLength: 3 },
    ),
    note: text,
  })
  .map(({ ownDays, ...booking }) => ({ ...booking, ...ownDays }));

/** A standing order whose ids of crops and recipes are places in a list, to be looked up with `among`. */
export const orderDraft = fc
  .record({
    order: fc.record({
      buyer: name,
      kind: fc.constantFrom("subscription" as const, "market" as const, "florist" as const),
      weekday: fc.integer({ min: 1, max: 7 }),
      firstOn: day,
      cropId: fc.option(fc.nat()),
      colours,
      askedCount: above0(10_000),
      stemCents: cents,
    }),
    dayCount: fc.nat(400),
    of: fc.oneof(
      fc.record({ role: fc.constantFrom(...ROLES), recipeId: fc.constant(null) }),
      fc.record({ role: fc.constant(null), recipeId: fc.nat() }),
    ),
  })
  .map(({ order, dayCount, of }) => ({ ...order, ...of, lastOn: addDays(order.firstOn, dayCount) }));

export const farmSettings = fc
  .record({
    name,
    isInvented: fc.boolean(),
    weekdays: fc.subarray([7, 1, 3, 5], { minLength: 1 }),
    share,
    cents,
    hours: fc.option(number(0, 1e6)),
  })
  .map(({ name, isInvented, weekdays, share, cents, hours }) => {
    const settings = farm({ name, isInvented, pickingWeekdays: weekdays, spareShare: share });
    const winter = { ...settings.winter, wageCentsPerHour: cents, hoursAtHand: hours, keepShareAtMost: share };
    return { ...settings, winter };
  });

/** The id of a row chosen by number, or of a row that is not there when there are none. */
export const among = (rows: readonly { readonly id: number }[], choice: number): number =>
  rows.length ? rows[choice % rows.length].id : 999_999;
