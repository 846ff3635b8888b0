import fc from "fast-check";
import { addBed, removeBed, updateBed } from "#db/write/beds";
import { addBooking, removeBooking, setBookingStatus, setLapses, updateBooking } from "#db/write/bookings";
import {
  addCrop,
  addVariety,
  putCurve,
  removeCrop,
  removeCurve,
  removeVariety,
  updateCrop,
  updateVariety,
} from "#db/write/crops";
import { emptyFarm, updateFarm } from "#db/write/farm";
import { putFigures } from "#db/write/figures";
import { putOrder, removeOrder } from "#db/write/orders";
import { addPlanting, carryPlantings, removePlanting, setTreatment, updatePlanting } from "#db/write/plantings";
import { putRecipe, removeRecipe } from "#db/write/recipes";
import { importRecords } from "#db/write/records";
import { removeWeather, takeWeather } from "#db/write/weather";
import { adoptWhatIf } from "#db/write/what-ifs";
import { addDays, parseDay } from "#lib/domain/day";
import { AS_ITS_CROP } from "#lib/domain/records/variety";
import { COLOURS, STATUSES, TREATMENTS } from "#lib/domain/words";
import { anyOwnTraits } from "../any-traits";
import {
  among,
  bedDraft,
  bookingDraft,
  cropDraft,
  curveDraft,
  farmSettings,
  name,
  orderDraft,
  plantingDraft,
  recipeDraft,
  share,
} from "./arbitraries";
import { booked, ordered } from "./drafts-on-farm";
import { seasonStep } from "./season-steps";
import { type Step, step } from "./step";

const pick = fc.nat();
const colour = fc.constantFrom(...COLOURS);
const ownTraits = fc.record(anyOwnTraits((min, max) => fc.integer({ min, max })));
const treatment = fc.constantFrom(...TREATMENTS);

/** Writes that others take back or build on, each before those. */
export const BOOKED_STEPS = [
  step("add booking", bookingDraft, (to, now, booking) => addBooking(to, booked(now, booking))),
  step("put order", fc.tuple(pick, orderDraft), (to, now, [at, draft]) =>
    putOrder(to, { ...ordered(now, draft), ...(at % 3 === 0 ? { id: among(now.standingOrders, at) } : {}) }),
  ),
  step("remove order", pick, (to, now, at) => removeOrder(to, among(now.standingOrders, at))),
] as const;

export const anyStep: fc.Arbitrary<Step> = fc.oneof(
  step("update farm", farmSettings, (to, _, farm) => updateFarm(to, farm)),
  step("empty farm", name, (to, _, called) => emptyFarm(to, called)),
  step("add crop", cropDraft, (to, _, crop) => addCrop(to, crop)),
  step("update crop", fc.tuple(pick, cropDraft), (to, now, [at, crop]) => updateCrop(to, among(now.crops, at), crop)),
  step("remove crop", pick, (to, now, at) => removeCrop(to, among(now.crops, at))),
  step("add variety", fc.tuple(pick, name, colour), (to, now, [at, called, colour]) =>
    addVariety(to, { cropId: among(now.crops, at), name: called, colour, ...AS_ITS_CROP }),
  ),
  step("update variety", fc.tuple(pick, pick, name, colour, ownTraits), (to, now, [at, crop, called, colour, own]) =>
    updateVariety(to, among(now.varieties, at), { cropId: among(now.crops, crop), name: called, colour, ...own }),
  ),
  step("remove variety", pick, (to, now, at) => {
    const unplanted = now.varieties.filter(({ id }) => now.plantings.every(({ varietyId }) => varietyId !== id));
    return removeVariety(to, among(unplanted.length ? unplanted : now.varieties, at));
  }),
  step("put curve of a crop", fc.tuple(pick, curveDraft), (to, now, [at, curve]) =>
    putCurve(to, { ...curve, cropId: among(now.crops, at), varietyId: null, plantingId: null }),
  ),
  step("put curve of a variety", fc.tuple(pick, curveDraft), (to, now, [at, curve]) => {
    const varietyId = among(now.varieties, at);
    const cropId = now.varieties.find(({ id }) => id === varietyId)?.cropId ?? 1;
    return putCurve(to, { ...curve, cropId, varietyId, plantingId: null });
  }),
  step("put curve of a planting", fc.tuple(pick, curveDraft), (to, now, [at, curve]) => {
    const plantingId = among(now.plantings, at);
    const varietyId = now.plantings.find(({ id }) => id === plantingId)?.varietyId ?? 1;
    const cropId = now.varieties.find(({ id }) => id === varietyId)?.cropId ?? 1;
    return putCurve(to, { ...curve, cropId, varietyId, plantingId });
  }),
  step("remove curve", pick, (to, now, at) => removeCurve(to, among(now.curves, at))),
  step("put recipe", recipeDraft, (to, _, recipe) => putRecipe(to, recipe)),
  step("replace recipe", fc.tuple(pick, recipeDraft), (to, now, [at, recipe]) =>
    putRecipe(to, { ...recipe, id: among(now.recipes, at) }),
  ),
  step("remove recipe", pick, (to, now, at) => removeRecipe(to, among(now.recipes, at))),
  step("add bed", bedDraft, (to, _, bed) => addBed(to, bed)),
  step("update bed", fc.tuple(pick, bedDraft), (to, now, [at, bed]) => updateBed(to, among(now.beds, at), bed)),
  step("remove bed", pick, (to, now, at) => removeBed(to, among(now.beds, at))),
  step("add planting", fc.tuple(pick, pick, plantingDraft), (to, now, [bed, variety, draft]) =>
    addPlanting(to, { ...draft, bedId: among(now.beds, bed), varietyId: among(now.varieties, variety) }),
  ),
  step("update planting", fc.tuple(pick, pick, plantingDraft), (to, now, [at, bed, draft]) =>
    updatePlanting(to, among(now.plantings, at), {
      ...draft,
      bedId: among(now.beds, bed),
      varietyId: among(now.varieties, at),
    }),
  ),
  step("remove planting", pick, (to, now, at) => removePlanting(to, among(now.plantings, at))),
  step("set treatment", fc.tuple(treatment, fc.option(share)), (to, now, [treatment, winterSurvivalShare]) =>
    setTreatment(
      to,
      now.plantings.map(({ id }) => id),
      treatment,
      { winterSurvivalShare },
    ),
  ),
  step("carry plantings", fc.constant(null), (to, now) =>
    carryPlantings(
      to,
      2027,
      2028,
      now.plantings.slice(0, 3).map(({ id: _, ...row }) => ({ ...row, seasonYear: 2028 })),
    ),
  ),
  step("take figures", pick, (to, now, at) =>
    putFigures(to, "took the figures", {
      crops: now.crops.slice(0, 1).map((row) => ({ ...row, holdDays: { ...row.holdDays, count: at % 30 } })),
      curves: now.curves.slice(0, 1).map((row) => ({ ...row, yieldSpread: (at % 10) / 10 })),
      recipes: now.recipes.slice(0, 1).map((row) => ({ ...row, origin: "own" })),
    }),
  ),
  { arbitrary: seasonStep, weight: 9 },
  step("take or remove weather", fc.tuple(fc.nat(800), fc.integer({ min: 1, max: 30 })), (to, now, [at, dayCount]) =>
    now.weather && at % 3 === 0
      ? removeWeather(to)
      : takeWeather(
          to,
          Array.from({ length: dayCount }, (_, index) => ({
            date: addDays(parseDay("2025-01-01"), at + index),
            highC: 12 + (at % 9),
            lowC: index % 9,
          })),
        ),
  ),
  ...BOOKED_STEPS,
  step("update booking", fc.tuple(pick, bookingDraft), (to, now, [at, booking]) =>
    updateBooking(to, among(now.bookings, at), booked(now, booking)),
  ),
  step("set status or lapse", fc.tuple(pick, fc.constantFrom(...STATUSES)), (to, now, [at, status]) =>
    at % 4 === 0
      ? setLapses(to, "then", [
          { bookingId: among(now.bookings, at), lapsesAfter: addDays(parseDay("2027-01-01"), at % 99) },
        ])
      : setBookingStatus(to, among(now.bookings, at), status),
  ),
  step("remove booking", pick, (to, now, at) => removeBooking(to, among(now.bookings, at))),
  step(
    "import",
    fc.tuple(cropDraft, bedDraft, plantingDraft, name, colour),
    (to, _, [crop, bed, draft, called, colour]) =>
      importRecords(to, {
        crops: [crop],
        beds: [bed],
        plantings: [{ ...draft, bed: bed.name, crop: crop.name, variety: called, colour }],
      }),
  ),
  step("adopt", fc.tuple(farmSettings, bookingDraft), (to, now, [farm, booking]) =>
    adoptWhatIf(to, "then", {
      farm,
      plantings: {
        changed: now.plantings
          .slice(0, 1)
          .map((row) => ({ ...row, plantCount: row.plantCount > 0 ? row.plantCount - 1 : 1 })),
        removedIds: now.plantings.slice(1, 2).map(({ id }) => id),
        added: [],
      },
      bookings: {
        changed: [],
        removedIds: now.bookings.slice(0, 1).map(({ id }) => id),
        added: [booked(now, booking)],
      },
    }),
  ),
);
