import fc from "fast-check";
import { toDay, toDayNumber } from "#lib/domain/day";
import { DECIMAL_MARKS } from "#lib/domain/read-number";
import { BED_FLAGS, type Bed } from "#lib/domain/records/bed";
import type { Farm } from "#lib/domain/records/farm-settings";
import { PLANTING_FLAGS } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import { MARKS } from "#lib/domain/sourced";
import { COLOURS, TREATMENTS } from "#lib/domain/words";
import { DATE_ORDERS } from "#lib/domain/writing";
import { anyHabit } from "../any-event-days";
import { anyReview } from "../any-review";
import { anyStoreSettings } from "../any-store";
import { anyMove, anyPurchase } from "../any-store-records";
import { anyOwnTraits } from "../any-traits";
import { anyFirstCuts } from "../db/any-first-cut";
import { monthDay, farm as plainFarm } from "../small-farm";
import { anyBooking, between, share } from "./any-booking";
import { anyClimate } from "./any-climate";
import { anyCrop } from "./any-crop";
import { anyBudLooks, anyCuts, anyDay, anyLosses, anyYears, cutsFor, forBookings } from "./any-cuts";
import { anyAge, anyAnchor, anyCourse } from "./any-heat";
import { anyOrder } from "./any-order";
import { anyRecipe } from "./any-recipe";
import { anyWeather } from "./any-weather";

/** Farms of every kind that the types allow, with the worst texts a person can type: quotes, slashes, line breaks, formulas. */

const nasty = fc.constantFrom('"', ",", ";", "\t", "\n", "\r\n", "/", "\\", "=", "-", "'", " ", "a", "B", "é", "花");
const anyText = fc.oneof(fc.string({ unit: nasty, maxLength: 12 }), fc.string({ unit: "grapheme", maxLength: 12 }));
const text = anyText.filter((words) => !words.includes("\uFFFD"));
const name = text.map((words) => words.trim()).filter((words) => words !== "");
/** As names are compared, spelled out again here. */
const key = (words: string) => words.normalize("NFC").replace(/\s+/g, " ").trim().toLowerCase();

const origin = fc.record({ mark: fc.constantFrom(...MARKS), source: fc.option(text.map((words) => words.trim())) });
const ownColour = fc.record({
  name: fc.constantFrom("antique rose", "Café", "ivory", "moss 2"),
  colour: fc.constantFrom(...COLOURS),
});

const farm: fc.Arbitrary<Farm> = fc
  .record({
    name,
    isInvented: fc.boolean(),
    zone: fc.constantFrom("", "7a", "10b"),
    units: fc.constantFrom("us" as const, "metric" as const),
    decimalMark: fc.constantFrom(...DECIMAL_MARKS),
    dateOrder: fc.constantFrom(...DATE_ORDERS),
    ...anyYears,
    ownColours: fc.uniqueArray(ownColour, { maxLength: 3, selector: ({ name }) => name }),
    pickingWeekdays: fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 7 }),
    habit: anyHabit(14),
    spareShare: share,
    ...anyStoreSettings(between),
    limit: fc.option(between(0, 1e9)),
    wageCentsPerHour: fc.nat(10_000),
    autumn: fc.constantFrom("09-20", "10-01"),
    climate: fc.option(anyClimate(name)),
  })
  .map(({ limit, wageCentsPerHour, autumn, habit, ...rest }) => {
    const plain = plainFarm({ ...rest, ...habit });
    return {
      ...plain,
      frost: { ...plain.frost, firstAutumnP10: monthDay(autumn) },
      winter: { ...plain.winter, wageCentsPerHour, leafCubicMetresAtHand: limit },
    };
  });

const crop = anyCrop(name, text, origin);

const bed: fc.Arbitrary<Omit<Bed, "id">> = fc.record({
  name: name.filter((words) => words.length <= 60),
  lengthMetres: between(0.01, 1000),
  widthMetres: between(0.01, 100),
  flags: fc.array(fc.constantFrom(...BED_FLAGS), { maxLength: 2 }),
  noEntryFrom: fc.constantFrom(null),
  noEntryUntil: fc.constantFrom(null),
  note: text,
});
const sprayed = fc.tuple(bed, fc.option(anyDay)).map(([plain, from]): Omit<Bed, "id"> => {
  return from ? { ...plain, noEntryFrom: from, noEntryUntil: toDay(toDayNumber(from) + 2) } : plain;
});

const recipe = anyRecipe(name, text);

const numbered = <T>(rows: readonly T[]) => rows.map((row, index) => ({ id: index + 1, ...row }));
const named = <T extends { name: string }>(rows: fc.Arbitrary<T>, minLength = 1) =>
  fc.uniqueArray(rows, { minLength, maxLength: 4, selector: (row) => key(row.name) }).map(numbered);

/** A whole farm; every reference is known, names differ as names are compared. */
export const anyFarm: fc.Arbitrary<Snapshot> = fc
  .record({ farm, crops: named(crop), beds: named(sprayed), recipes: named(recipe) })
  .chain(({ crops, beds, recipes, farm }) => {
    const idOf = (rows: readonly { id: number }[]) => fc.constantFrom(...rows.map(({ id }) => id));
    const colour = fc.constantFrom(...COLOURS);
    const variety = fc.record({ cropId: idOf(crops), name, colour, ...anyOwnTraits(between) });
    return fc
      .uniqueArray(variety, { minLength: 1, maxLength: 5, selector: (row) => `${row.cropId} ${key(row.name)}` })
      .map(numbered)
      .chain((varieties) => {
        const curve = fc.tuple(
          fc.constantFrom(...varieties),
          fc.boolean(),
          fc.record({
            treatment: fc.constantFrom(...TREATMENTS),
            anchor: anyAnchor,
            stemsPerPlantByWeek: fc.array(between(0, 1000), { minLength: 1, maxLength: 6 }),
            firstCutSpreadDays: between(0, 60),
            yieldSpread: between(0, 2),
            timingOrigin: origin,
            yieldOrigin: origin,
            note: text,
            heatOrigin: origin,
          }),
          anyCourse,
        );
        const planting = fc.record({
          bedId: idOf(beds),
          varietyId: idOf(varieties),
          seasonYear: fc.integer({ min: 1990, max: 2200 }),
          treatment: fc.constantFrom(...TREATMENTS),
          plantedOn: anyDay,
          plantCount: fc.nat(1_000_000),
          ...anyAge,
          aliveShare: share,
          gradeOutShare: fc.option(share),
          winterSurvivalShare: fc.option(share),
          flags: fc.array(fc.constantFrom(...PLANTING_FLAGS), { maxLength: 2 }),
        });
        const booking = anyBooking({ cropId: idOf(crops), recipeId: idOf(recipes), client: name, note: text });
        // Bookings by their place among the farm's.
        const stored = { day: anyDay, varietyId: idOf(varieties), bookingId: fc.nat(2) };
        const rest = fc.record({
          ...{ farm: fc.constant(farm), crops: fc.constant(crops) },
          ...{ beds: fc.constant(beds), recipes: fc.constant(recipes) },
          varieties: fc.constant(varieties),
          curves: fc
            .array(curve, { maxLength: 4 })
            .map((rows) =>
              rows.map(([{ id, cropId }, isOwn, rest, course]) => ({
                cropId,
                ...{ varietyId: isOwn ? id : null, plantingId: null },
                ...rest,
                ...course,
              })),
            )
            .map((rows) => numbered(onceEach(rows, (row) => `${row.cropId} ${row.varietyId} ${row.treatment}`))),
          plantings: fc.array(planting, { maxLength: 6 }).map((rows) => numbered(onceEach(rows, JSON.stringify))),
          bookings: fc
            .uniqueArray(booking, { maxLength: 3, selector: (row) => `${key(row.client)} ${row.eventOn}` })
            .map(numbered),
          coolerStock: fc
            .array(fc.record({ varietyId: idOf(varieties), cutOn: anyDay, stemCount: fc.nat(1_000_000) }), {
              maxLength: 3,
            })
            .map(numbered),
          coolerMoves: fc.array(anyMove(stored), { maxLength: 4 }),
          purchases: fc.array(anyPurchase(stored, name), { maxLength: 3 }),
          budLooks: anyBudLooks(idOf(beds), idOf(varieties)),
          losses: anyLosses(idOf(beds), idOf(varieties)),
          firstCuts: fc
            .tuple(anyFirstCuts, fc.constantFrom(...varieties), fc.boolean())
            .map(([rows, { id, cropId }, isOwn]) =>
              numbered(rows.map((row) => ({ ...row, cropId, varietyId: isOwn ? id : null }))),
            ),
          reviews: fc.uniqueArray(anyReview, { selector: ({ role }) => role, maxLength: 3 }),
          standingOrders: fc
            .array(anyOrder({ cropId: idOf(crops), recipeId: idOf(recipes), buyer: name }), { maxLength: 3 })
            .map(numbered),
          cuts: anyCuts(idOf(beds), idOf(varieties)),
          weather: anyWeather,
        });
        return rest.map((all) => ({
          ...all,
          cuts: cutsFor(all.cuts, all.bookings.length),
          reviews: all.bookings.length ? numbered(all.reviews.map((row) => ({ ...row, bookingId: 1 }))) : [],
          coolerMoves: forBookings(all.coolerMoves, all.bookings.length),
          purchases: forBookings(all.purchases, all.bookings.length),
        }));
      });
  });

const onceEach = <T>(rows: readonly T[], keyOf: (row: T) => string): T[] => [
  ...new Map(rows.map((row) => [keyOf(row), row])).values(),
];
