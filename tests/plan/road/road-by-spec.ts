import { dayInYear, toDayNumber, weekdayOfDayNumber } from "#lib/domain/day";
import type { Bed } from "#lib/domain/records/bed";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { Planting } from "#lib/domain/records/planting";
import type { Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Colour, ROLES, type Role, type StemAsk } from "#lib/domain/words";
import { asVariety } from "./as-variety";
import { inOrder } from "./asked-of-a-stem";
import { firstCutBySpec, heatEndBySpec, saleableBySpec, shareBySpec } from "./bloom-by-spec";
import { lastCutBySpec } from "./event-days-by-spec";
import { coloursBySpec } from "./line-colours-by-spec";
import { findUsable } from "./usable-by-spec";

/**
 * The first half of the road by a slow second method, written from lib/plan/SPEC.md alone and with nothing of lib/plan but the usual days of a climate [F8] [F9]: what
 * each planting gives, day by day, and what each booking asks. Sums that must be exact are made with fractions of whole numbers. The second half is match-by-arcs.
 */

export type SpecPlanting = {
  readonly planting: Planting;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly cutDays: number[];
  readonly cutStems: number[];
  /** Of these, the ones that can be promised [F14]. */
  readonly usableStems: number[];
  lostInFieldStems: number;
  lostToFrostStems: number;
};

/** What every planting of every season gives [F1] to [F7]. */
export const bloomBySpec = (snapshot: Snapshot): SpecPlanting[] =>
  [...snapshot.plantings].sort((a, b) => a.id - b.id).map((planting) => bloomOf(snapshot, planting));

function bloomOf(snapshot: Snapshot, planting: Planting): SpecPlanting {
  const variety = theOne(snapshot.varieties, planting.varietyId);
  const crop = asVariety(variety, theOne(snapshot.crops, variety.cropId));
  const given: SpecPlanting = nothing(planting, variety, crop);
  const { winter } = snapshot.farm;
  const isKept = planting.treatment === "kept-in-ground";
  const survival = isKept ? (planting.winterSurvivalShare ?? winter.winterSurvivalShare) : 1;
  const set = planting.plantCount * planting.aliveShare;
  const blooms = addBloom(given, snapshot, planting, set * survival);
  findUsable(given);
  if (!isKept || !blooms || survival === 1 || winter.replantDeadShare === 0) return given;
  // The dead are replanted on the planting's own day, in the season's year.
  const plantedOn = `${planting.seasonYear}${planting.plantedOn.slice(4)}`;
  const replanted = {
    ...planting,
    treatment: "spring-planted" as const,
    plantedOn: plantedOn as Planting["plantedOn"],
  };
  const late: SpecPlanting = nothing(planting, variety, crop);
  addBloom(late, snapshot, replanted, set * (1 - survival) * winter.replantDeadShare);
  findUsable(late);
  return bothOf(given, late);
}

const nothing = (planting: Planting, variety: Variety, crop: Crop): SpecPlanting => ({
  ...{ planting, variety, crop, cutDays: [], cutStems: [], usableStems: [] },
  ...{ lostInFieldStems: 0, lostToFrostStems: 0 },
});

function bothOf(one: SpecPlanting, other: SpecPlanting): SpecPlanting {
  const cutDays = [...new Set([...one.cutDays, ...other.cutDays])].sort((a, b) => a - b);
  const sumOn = (day: number, of: "cutStems" | "usableStems") =>
    [one, other].reduce((sum, row) => sum + (row[of][row.cutDays.indexOf(day)] ?? 0), 0);
  return {
    ...one,
    cutDays,
    cutStems: cutDays.map((day) => sumOn(day, "cutStems")),
    usableStems: cutDays.map((day) => sumOn(day, "usableStems")),
    lostInFieldStems: one.lostInFieldStems + other.lostInFieldStems,
    lostToFrostStems: one.lostToFrostStems + other.lostToFrostStems,
  };
}

/** Adds what so many plants give by the curve of their treatment; false where there is none, or where it blooms far from its season. */
function addBloom(given: SpecPlanting, snapshot: Snapshot, planting: Planting, alive: number): boolean {
  const { variety, crop } = given;
  const bed = theOne(snapshot.beds, planting.bedId);
  const forTreatment = snapshot.curves.filter(
    ({ cropId, treatment }) => cropId === crop.id && treatment === planting.treatment,
  );
  const curve =
    forTreatment.find(({ varietyId, plantingId }) => plantingId === planting.id && varietyId === variety.id) ??
    forTreatment.find(({ varietyId, plantingId }) => plantingId === null && varietyId === variety.id) ??
    forTreatment.find(({ varietyId }) => varietyId === null);
  if (!curve) return false;
  const first = firstCutBySpec(snapshot, curve, planting);
  if (first === null) return false;
  const weeks = [...curve.stemsPerPlantByWeek];
  const firstFrost = toDayNumber(dayInYear(snapshot.farm.frost.firstAutumnP50, planting.seasonYear));
  const last = weeks.at(-1) ?? 0;
  // Until the frost lies in the last week or before it; frost dates lie within the season's year.
  if (curve.ends === "frost" && crop.tender) while (first + weeks.length * 7 < firstFrost) weeks.push(last);
  const good = weeks.map((stems, week) => saleableBySpec(curve, planting, stems, first + week * 7));
  const perPlant = good.reduce((sum, stems) => sum + stems, 0) * shareBySpec(snapshot, curve, planting);
  const season = Math.floor(alive * (1 - (planting.gradeOutShare ?? 0)) * perPlant * (1 + 1e-12) + 0.5);
  const tooHot = heatEndBySpec(snapshot, curve, first);
  if (tooHot === first) return false;
  const frost = crop.tender ? firstFrost : Number.POSITIVE_INFINITY;
  shared(season, good).forEach((ofWeek, week) => {
    for (let weekday = 0; weekday < 7; weekday++) {
      const stems = Math.floor(((weekday + 1) * ofWeek) / 7) - Math.floor((weekday * ofWeek) / 7);
      if (stems > 0 && first + week * 7 + weekday < tooHot)
        pick(given, snapshot, bed, first + week * 7 + weekday, stems, frost);
    }
  });
  return true;
}

/** Where the stems that open on a day go [F4] [F5] [F6]. */
function pick(given: SpecPlanting, { farm }: Snapshot, bed: Bed, day: number, stems: number, frost: number): void {
  const isOpen = (other: number) =>
    bed.noEntryFrom === null ||
    bed.noEntryUntil === null ||
    other < toDayNumber(bed.noEntryFrom) ||
    other >= toDayNumber(bed.noEntryUntil);
  let cutOn = day;
  while (!farm.pickingWeekdays.includes(weekdayOfDayNumber(cutOn)) || !isOpen(cutOn)) cutOn++;
  const lasts = given.crop.fieldDays.count;
  const standsAtFrost = cutOn >= frost && day + lasts >= frost;
  if (day >= frost || standsAtFrost) given.lostToFrostStems += stems;
  else if (cutOn > day + lasts) given.lostInFieldStems += stems;
  else if (given.cutDays.includes(cutOn)) given.cutStems[given.cutDays.indexOf(cutOn)] += stems;
  else {
    given.cutDays.push(cutOn);
    given.cutStems.push(stems);
  }
}

/** A whole number shared by weights: each its share rounded down, then one more to the greatest remainders, the earlier first. */
function shared(total: number, weights: readonly number[]): number[] {
  const places = Math.max(0, ...weights.map((weight) => decimals(weight).length));
  const tops = weights.map((weight) => scaled(weight, places));
  const all = tops.reduce((sum, top) => sum + top, 0n);
  if (all === 0n) return weights.map(() => 0);
  const parts = tops.map((top) => (BigInt(total) * top) / all);
  const remainders = tops.map((top) => (BigInt(total) * top) % all);
  let left = BigInt(total) - parts.reduce((sum, part) => sum + part, 0n);
  while (left-- > 0n) {
    let most = 0;
    remainders.forEach((remainder, index) => {
      if (remainder > remainders[most]) most = index;
    });
    parts[most] += 1n;
    remainders[most] = -1n;
  }
  return parts.map(Number);
}

export type SpecNeed = {
  readonly booking: Booking;
  readonly eventDay: number;
  /** From the last day on which a stem for it may be cut to the event [M12]. */
  readonly leadDays: number;
  readonly role: Role;
  readonly cropId: number | null;
  readonly cropOnly: boolean;
  readonly asks: readonly StemAsk[];
  readonly colours: readonly Colour[];
  readonly stems: number;
};

/** What all bookings ask for, in the order in which equal claims are served [N1] [N2] [N3] [M7]. */
export function needsBySpec(snapshot: Snapshot): SpecNeed[] {
  return snapshot.bookings
    .filter(({ status }) => status !== "cancelled")
    .sort((a, b) => toDayNumber(a.eventOn) - toDayNumber(b.eventOn) || a.id - b.id)
    .flatMap((booking) => asked(snapshot, booking));
}

function asked(snapshot: Snapshot, booking: Booking): SpecNeed[] {
  const lines = [
    ...booking.pieces.flatMap(({ recipeId, pieceCount, colours }) =>
      theOne(snapshot.recipes, recipeId).lines.map((line) => ({
        ...{ role: line.role, cropId: null, cropOnly: false, asks: line.asks },
        colours: coloursBySpec(line.colours, colours, booking),
        times: [pieceCount, line.stemsPerPiece] as const,
      })),
    ),
    ...booking.stemLines.map(({ stemCount, ...line }) => ({ ...line, times: [1, stemCount] as const })),
  ];
  const keyOf = (line: (typeof lines)[number]) =>
    JSON.stringify([ROLES.indexOf(line.role), line.colours, line.cropId, line.cropOnly, inOrder(line.asks)]);
  const kinds = [...new Set(lines.map(keyOf))].map((key) => lines.filter((line) => keyOf(line) === key));
  return kinds
    .map((alike) => {
      const { times: _, asks, ...line } = alike[0];
      // Fractions to 40 places: a product of three numbers of floating point has no more.
      const stems = alike.reduce((sum, { times: [count, each] }) => sum + scaled(count, 20) * scaled(each, 20), 0n);
      const top = stems * (scaled(1, 20) + scaled(booking.spareShare, 20));
      const whole = (top + 10n ** 60n - 1n) / 10n ** 60n;
      return {
        booking,
        ...{ eventDay: toDayNumber(booking.eventOn), leadDays: lastCutBySpec(snapshot.farm, booking, asks) },
        ...line,
        ...{ asks: inOrder(asks), stems: Number(whole) },
      };
    })
    .sort(
      (a, b) =>
        ROLES.indexOf(a.role) - ROLES.indexOf(b.role) ||
        compared(a.colours.join(), b.colours.join()) ||
        (a.cropId ?? 0) - (b.cropId ?? 0) ||
        Number(a.cropOnly) - Number(b.cropOnly) ||
        compared(a.asks.join(), b.asks.join()),
    );
}

const compared = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The digits after the point of a number as it is written. */
const decimals = (number: number): string => /\.(\d+)$/.exec(written(number))?.[1] ?? "";

const written = (number: number): string => (String(number).includes("e") ? number.toFixed(20) : String(number));

/** A number as written, times a power of ten: whole. */
function scaled(number: number, places: number): bigint {
  const [whole] = written(number).split(".");
  return BigInt(whole + decimals(number).padEnd(places, "0").slice(0, places));
}

function theOne<T extends { readonly id: number }>(rows: readonly T[], id: number): T {
  const found = rows.filter((row) => row.id === id);
  if (found.length !== 1) throw new Error(`${found.length} rows with id ${id}`);
  return found[0];
}
