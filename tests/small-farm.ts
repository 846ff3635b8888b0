import { type Day, type MonthDay, parseDay } from "#lib/domain/day";
import type { Bed } from "#lib/domain/records/bed";
import { BY_WEEKS } from "#lib/domain/records/bloom-end";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import { NEVER_LARGER } from "#lib/domain/records/earlier-ask";
import type { Farm } from "#lib/domain/records/farm-settings";
import { NO_FINAL_COUNT } from "#lib/domain/records/final-count";
import { BY_CALENDAR } from "#lib/domain/records/heat";
import type { Planting } from "#lib/domain/records/planting";
import type { Recipe } from "#lib/domain/records/recipe";
import { AS_ITS_CROP, type Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import { FROM_MEMORY, OWN } from "#lib/domain/sourced";

/** Builders for farms small enough to check by hand: each takes what the case is about and fills the rest with plain values. */

export const day = (text: string): Day => parseDay(text);
export const monthDay = (text: string): MonthDay => parseDay(`2027-${text}`).slice(5) as MonthDay;

export const farm = (given: Partial<Farm> = {}): Farm => ({
  name: "Test farm",
  isInvented: true,
  zone: "7a",
  units: "us",
  decimalMark: "point",
  dateOrder: "ask",
  ownColours: [],
  pickingWeekdays: [1, 3, 4, 6],
  ...{ leadDays: 2, wornLaterDays: 0, designDays: 1, deliverDays: 0 },
  orderDaysAhead: 21,
  ...{ enquiryDays: 14, holdDays: 30, finalCountDays: 28 },
  spareShare: 0.1,
  promiseLossCents: null,
  ...{ storeC: null, coolRoomC: 13, storesDry: true, followsSeason: true },
  ...{ frostAlarmC: 2, coldNightOn: null, coldNightLowC: null, killingFrosts: [], learnedWinters: [] },
  ...{ cutStemsPerHour: 150, cutHoursPerDay: null, benchStemsPerHour: 36, benchHoursPerWeek: null, bucketPlaces: null },
  frost: {
    firstAutumnP10: monthDay("10-04"),
    firstAutumnP50: monthDay("10-18"),
    firstAutumnP90: monthDay("11-02"),
    lastSpringP10: monthDay("05-04"),
    lastSpringP50: monthDay("04-20"),
    lastSpringP90: monthDay("04-06"),
  },
  climate: null,
  statusWeights: { confirmed: 1, held: 0.6, enquiry: 0.3 },
  winter: {
    wageCentsPerHour: 2000,
    digClumpsPerHour: 30,
    divideClumpsPerHour: 14,
    replantTubersPerHour: 90,
    storageCentsPerClump: 40,
    storageLossShare: 0.075,
    divisionsPerClump: 4,
    tuberCents: 600,
    tubersWantedShare: 0,
    leafDepthMetres: 0.2,
    leafSettlingShare: 0,
    leafEdgeMetres: 0,
    leafCentsPerCubicMetre: 0,
    leafHaulHoursPerCubicMetre: 0,
    tarpEdgeMetres: 0,
    tarpCentsPerSquareMetre: 50,
    coverHoursPerSquareMetre: 0.08,
    winterSurvivalShare: 0.8,
    replantDeadShare: 0,
    freeBedCentsPerSquareMetre: 0,
    leafCubicMetresAtHand: null,
    tarpSquareMetresAtHand: null,
    hoursAtHand: null,
    expectedFrom: "a number",
    ...{ expectedSaturdayCount: 0, expectedWeightShare: 0.3 },
    ...{ workHoursPerDay: 6, figuresEdition: 2 },
    keepShareAtMost: null,
  },
  ...given,
});

export const crop = (given: Partial<Crop> & { id: number }): Crop => ({
  name: `Crop ${given.id}`,
  scientific: "",
  shape: "mass",
  roles: ["focal"],
  usualRole: "focal",
  ...{ headSize: null, stemLength: null, outOfWater: null, traitsOrigin: OWN },
  ...{ tender: false, overwinters: false },
  holdDays: { count: 4, ...OWN },
  stretchDays: { count: 0, ...OWN },
  dryHoldDays: { count: 0, ...OWN },
  holdUpToC: { count: 5, ...OWN },
  notColderC: { count: 0, ...OWN },
  cutSpareShare: { count: 0, ...OWN },
  fieldDays: { count: 2, ...OWN },
  ...{ bunchStems: { count: 10, ...OWN }, bucketStems: { count: 50, ...OWN } },
  buyInCents: { count: 300, ...OWN },
  buyInColours: [],
  buyInMonths: [],
  tradeOrigin: OWN,
  cutStage: "open",
  cautions: [],
  ...given,
});

export const variety = (given: Partial<Variety> & { id: number }): Variety => ({
  cropId: 1,
  name: `Variety ${given.id}`,
  colour: "cream",
  ...AS_ITS_CROP,
  ...given,
});

export const curve = (given: Partial<BloomCurve> = {}): BloomCurve => ({
  id: 1,
  cropId: 1,
  varietyId: null,
  plantingId: null,
  treatment: "field",
  anchor: { kind: "day-of-year", firstCut: monthDay("06-07") },
  stemsPerPlantByWeek: [1],
  firstCutSpreadDays: 5,
  yieldSpread: 0.2,
  timingOrigin: FROM_MEMORY,
  yieldOrigin: FROM_MEMORY,
  note: "",
  ...BY_CALENDAR,
  ...BY_WEEKS,
  sowingDays: null,
  ...{ laterDays: 0, learned: [] },
  shareByAge: [],
  lateLossShare: null,
  saleableBySeason: [],
  heatOrigin: FROM_MEMORY,
  ...given,
});

export const bed = (given: Partial<Bed> & { id: number }): Bed => ({
  name: `B${given.id}`,
  lengthMetres: 15,
  widthMetres: 1.2,
  flags: [],
  noEntryFrom: null,
  noEntryUntil: null,
  note: "",
  ...given,
});

/** A bed as a sheet says it. */
export const newBed = (name: string): Omit<Bed, "id"> => {
  const { id: _, ...draft } = bed({ id: 0, name });
  return draft;
};

export const planting = (given: Partial<Planting> & { id: number }): Planting => ({
  bedId: 1,
  varietyId: 1,
  seasonYear: 2027,
  treatment: "field",
  plantedOn: day("2027-05-20"),
  plantCount: 70,
  ageSeasons: null,
  sown: false,
  daysLate: null,
  yieldFactor: null,
  aliveShare: 1,
  gradeOutShare: 0,
  winterSurvivalShare: null,
  flags: [],
  ...given,
});

export const recipe = (given: Partial<Recipe> & { id: number }): Recipe => ({
  name: `Piece ${given.id}`,
  unit: "piece",
  lines: [{ role: "focal", stemsPerPiece: 5, asks: [], colours: "palette" }],
  origin: "common practice",
  ...given,
});

export const booking = (given: Partial<Booking> & { id: number }): Booking => ({
  client: `Client ${given.id}`,
  status: "confirmed",
  lapsesAfter: null,
  eventOn: day("2027-06-12"),
  ...{ palette: [], alternativeColours: [], unacceptableColours: [] },
  spareShare: 0,
  ...{ priceCents: null, finalDueOn: null, ...NO_FINAL_COUNT, ...NEVER_LARGER },
  unacceptableCropIds: [],
  ...{ pieces: [], stemLines: [], promises: [] },
  ...{ leadDays: null, designDays: null, deliverDays: null },
  takenOn: null,
  note: "",
  ...given,
});

/** A booking's only line: so many focal stems, in any colour unless told. */
export const focal = (stemCount: number, given: Partial<Booking["stemLines"][number]> = {}): Booking["stemLines"] => [
  { role: "focal", cropId: null, cropOnly: false, asks: [], colours: [], stemCount, ...given },
];

/** One crop, one cream variety in one bed of 70 plants with a stem each in the week of 7 June 2027; no bookings. */
export const snapshot = (given: Partial<Snapshot> = {}): Snapshot => ({
  farm: farm(),
  crops: [crop({ id: 1 })],
  varieties: [variety({ id: 1 })],
  curves: [curve()],
  recipes: [recipe({ id: 1 })],
  beds: [bed({ id: 1 })],
  plantings: [planting({ id: 1 })],
  bookings: [],
  coolerStock: [],
  standingOrders: [],
  ...{ cuts: [], coolerMoves: [], purchases: [], budLooks: [], losses: [], firstCuts: [], reviews: [] },
  weather: null,
  ...given,
});
