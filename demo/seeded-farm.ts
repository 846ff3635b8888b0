import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import { addDays, dayInYear, type MonthDay } from "#lib/domain/day";
import { newFarm } from "#lib/domain/new-farm";
import type { Bed } from "#lib/domain/records/bed";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import { NEVER_LARGER } from "#lib/domain/records/earlier-ask";
import { NO_FINAL_COUNT } from "#lib/domain/records/final-count";
import type { Planting } from "#lib/domain/records/planting";
import type { Recipe } from "#lib/domain/records/recipe";
import { AS_ITS_CROP, type Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import { COLOURS, type Colour, type Status } from "#lib/domain/words";
import { oneOf, type RandomSource, seededRandom, wholeBetween } from "#lib/maths/random";

/** How large an invented farm is to be. */
export type FarmSize = { readonly bedCount: number; readonly bookingCount: number };

export const TYPICAL: FarmSize = { bedCount: 80, bookingCount: 60 };
export const LARGE: FarmSize = { bedCount: 400, bookingCount: 400 };
export const VERY_LARGE: FarmSize = { bedCount: 4000, bookingCount: 4000 };

/** Share of events in each month, from April: our own guess, heavy in June and in autumn. */
const EVENT_MONTHS = [4, 5, 5, 6, 6, 6, 7, 8, 8, 9, 9, 9, 9, 10, 10, 10, 10, 11];
const PALETTES: readonly (readonly Colour[])[] = [
  ["blush", "cream", "white"],
  ["cream", "white"],
  ["plum", "burgundy", "purple"],
  ["peach", "apricot", "coral"],
  ["pink", "blush", "coral"],
  ["yellow", "orange", "bronze"],
  ["lavender", "purple", "blue"],
  ["red", "burgundy"],
];

/**
 * An invented farm of any size from a seed: the same seed and size give the same farm. For benchmarks and for tests over many seeds.
 * Half of the beds grow dahlias, a third of those kept in the ground; the rest take turns through the catalogue.
 */
export function seededFarm(seed: number, { bedCount, bookingCount }: FarmSize, seasonYear = 2027): Snapshot {
  const random = seededRandom(seed);
  const crops: Crop[] = CATALOGUE.map(({ curves: _, ...crop }, index) => ({ id: index + 1, ...crop }));
  const curves: BloomCurve[] = CATALOGUE.flatMap((crop, index) =>
    crop.curves.map((curve) => ({ ...curve, cropId: index + 1, varietyId: null, plantingId: null })),
  ).map((curve, index) => ({ id: index + 1, ...curve }));
  const recipes: Recipe[] = DEFAULT_RECIPES.map((recipe, index) => ({ id: index + 1, ...recipe }));
  const varieties = seededVarieties(random, crops);
  const beds = Array.from({ length: bedCount }, (_, index) => seededBed(index + 1));
  const plantings = beds.map((bed) => seededPlanting(random, bed, crops, varieties, curves, seasonYear));
  const bookings = Array.from({ length: bookingCount }, (_, index) =>
    seededBooking(random, index + 1, recipes, crops, seasonYear),
  );
  const farm = { ...newFarm(`Invented farm ${seed}`), isInvented: true, wornLaterDays: 0 };
  return {
    farm,
    crops,
    varieties,
    curves,
    recipes,
    beds,
    plantings,
    bookings,
    coolerStock: [],
    coolerMoves: [],
    purchases: [],
    standingOrders: [],
    cuts: [],
    budLooks: [],
    losses: [],
    firstCuts: [],
    reviews: [],
    weather: null,
  };
}

/** Dahlias come in many colours, other crops in a few; foliage is green or silver. */
function seededVarieties(random: RandomSource, crops: readonly Crop[]): Variety[] {
  let id = 0;
  return crops.flatMap((crop) => {
    const count = crop.overwinters ? 16 : crop.shape === "foliage" ? 2 : 4;
    return Array.from({ length: count }, (_, index) => ({
      id: ++id,
      cropId: crop.id,
      name: `No. ${index + 1}`,
      colour: crop.shape === "foliage" ? (index === 0 ? "green" : "silver") : oneOf(random, COLOURS.slice(0, 16)),
      ...AS_ITS_CROP,
    }));
  });
}

const seededBed = (id: number): Bed => ({
  id,
  name: `S${id}`,
  lengthMetres: 15,
  widthMetres: 1.2,
  flags: [],
  noEntryFrom: null,
  noEntryUntil: null,
  note: "",
});

function seededPlanting(
  random: RandomSource,
  bed: Bed,
  crops: readonly Crop[],
  varieties: readonly Variety[],
  curves: readonly BloomCurve[],
  seasonYear: number,
): Planting {
  const wintering = crops.filter((crop) => crop.overwinters);
  const crop = bed.id % 2 === 0 ? oneOf(random, wintering) : crops[bed.id % crops.length];
  const ofCrop = curves.filter((curve) => curve.cropId === crop.id);
  const treatment = crop.overwinters
    ? random() < 0.33
      ? "kept-in-ground"
      : "spring-planted"
    : oneOf(random, ofCrop).treatment;
  const plantedOn = addDays(dayInYear("05-10" as MonthDay, seasonYear), wholeBetween(random, 0, 30));
  return {
    id: bed.id,
    bedId: bed.id,
    varietyId: oneOf(
      random,
      varieties.filter((variety) => variety.cropId === crop.id),
    ).id,
    seasonYear,
    treatment,
    plantedOn,
    plantCount: wholeBetween(random, 30, 120),
    ageSeasons: null,
    sown: false,
    daysLate: null,
    yieldFactor: null,
    aliveShare: 0.95,
    gradeOutShare: 0.1,
    winterSurvivalShare: null,
    flags: [],
  };
}

function seededBooking(
  random: RandomSource,
  id: number,
  recipes: readonly Recipe[],
  crops: readonly Crop[],
  seasonYear: number,
): Booking {
  const month = oneOf(random, EVENT_MONTHS);
  const monthDay = `${String(month).padStart(2, "0")}-${String(wholeBetween(random, 1, 28)).padStart(2, "0")}`;
  const status: Status = random() < 0.6 ? "confirmed" : random() < 0.6 ? "held" : "enquiry";
  const piece = (recipeIndex: number, least: number, most: number) => ({
    recipeId: recipes[recipeIndex % recipes.length].id,
    pieceCount: wholeBetween(random, least, most),
    colours: [],
  });
  const focalCrop = oneOf(
    random,
    crops.filter((crop) => crop.roles.includes("focal")),
  );
  return {
    id,
    client: `Invented client ${id}`,
    status,
    lapsesAfter: null,
    eventOn: dayInYear(monthDay as MonthDay, seasonYear),
    palette: [...oneOf(random, PALETTES)],
    alternativeColours: [],
    unacceptableColours: [],
    spareShare: 0.1,
    priceCents: null,
    finalDueOn: null,
    ...NO_FINAL_COUNT,
    ...NEVER_LARGER,
    unacceptableCropIds: random() < 0.2 ? [oneOf(random, crops).id] : [],
    pieces: [piece(0, 1, 1), piece(1, 2, 6), piece(2, 4, 10), piece(4, 4, 14)],
    stemLines: [
      {
        role: "focal",
        cropId: focalCrop.id,
        cropOnly: false,
        asks: [],
        colours: [],
        stemCount: wholeBetween(random, 5, 40),
      },
      {
        role: "secondary",
        cropId: null,
        cropOnly: false,
        asks: [],
        colours: [oneOf(random, COLOURS)],
        stemCount: wholeBetween(random, 5, 30),
      },
    ],
    promises: [],
    ...{ leadDays: null, designDays: null, deliverDays: null },
    takenOn: null,
    note: "",
  };
}
