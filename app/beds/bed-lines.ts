import { dayInYear, type MonthDay, mondayNumber, toDayNumber } from "#lib/domain/day";
import type { Bed } from "#lib/domain/records/bed";
import { COLOURS, type Colour } from "#lib/domain/words";
import type { PlantingForecast } from "#lib/plan/road/forecast";
import { fieldOf } from "./field-of";

/** Stems cut of one colour in each week shown. */
export type ColourWeeks = { readonly colour: Colour; readonly stems: readonly number[] };

/** A bed with its plantings of the season. */
export type BedLine = {
  readonly bed: Bed;
  /** The number or word that tells the bed from others of its field. */
  readonly sign: string;
  readonly plantings: readonly PlantingForecast[];
  /** Cut in the weeks shown. */
  readonly stems: number;
  /** The first day with something to cut, as a day number; null without one. */
  readonly firstCut: number | null;
  readonly colours: readonly ColourWeeks[];
};

/** Beds that lie together, as their names say. */
export type BedField = { readonly name: string; readonly lines: readonly BedLine[] };

/** Weeks from Monday to Monday, as day numbers of the first and after the last. */
export type WeekSpan = { readonly first: number; readonly count: number };

/** The weeks of a season: March to November, and as much more as has something to cut. */
export function weeksShown(forecasts: readonly PlantingForecast[], seasonYear: number): WeekSpan {
  let from = toDayNumber(dayInYear("03-01" as MonthDay, seasonYear));
  let to = toDayNumber(dayInYear("11-30" as MonthDay, seasonYear));
  for (const { cutDays } of forecasts) {
    if (cutDays.length === 0) continue;
    from = Math.min(from, cutDays[0]);
    to = Math.max(to, cutDays[cutDays.length - 1]);
  }
  const first = mondayNumber(from);
  return { first, count: (mondayNumber(to) - first) / 7 + 1 };
}

/** The weeks of a span from the one that a day lies in on, and how many before it have gone by; all of them before the first and after the last. `today` is a day number. */
export function weeksFrom(
  { first, count }: WeekSpan,
  today: number,
): { readonly ahead: WeekSpan; readonly goneCount: number } {
  const gone = Math.floor((today - first) / 7);
  const goneCount = gone > 0 && gone < count ? gone : 0;
  return { ahead: { first: first + 7 * goneCount, count: count - goneCount }, goneCount };
}

/** Beds by the field in their names ("Long Field 3" is bed 3 of Long Field), in the order given. */
export function bedFields(beds: readonly Bed[], forecasts: readonly PlantingForecast[], weeks: WeekSpan): BedField[] {
  const inBed = new Map<number, PlantingForecast[]>(beds.map(({ id }) => [id, []]));
  for (const row of forecasts) inBed.get(row.bed.id)?.push(row);
  const fields = new Map<string, BedLine[]>();
  for (const bed of beds) {
    const { field, sign } = fieldOf(bed.name);
    const lines = fields.get(field) ?? [];
    lines.push(lineOf(bed, sign, inBed.get(bed.id) ?? [], weeks));
    fields.set(field, lines);
  }
  return [...fields].map(([name, lines]) => ({ name, lines }));
}

/** Stems cut by colour in the weeks of a span, in the order of `COLOURS`; none with 0 stems. */
export function colourWeeks(plantings: readonly PlantingForecast[], { first, count }: WeekSpan): ColourWeeks[] {
  const byColour = new Map<Colour, number[]>();
  for (const { variety, cutDays, cutStems } of plantings) {
    const stems = byColour.get(variety.colour) ?? new Array<number>(count).fill(0);
    cutDays.forEach((day, index) => {
      if (day >= first) stems[Math.floor((day - first) / 7)] += cutStems[index];
    });
    byColour.set(variety.colour, stems);
  }
  return COLOURS.flatMap((colour) => {
    const stems = byColour.get(colour);
    return stems?.some((ofWeek) => ofWeek > 0) ? [{ colour, stems }] : [];
  });
}

/** Stems cut of some plantings from a day on. */
export const stemsFrom = (plantings: readonly PlantingForecast[], first: number): number =>
  plantings.reduce(
    (sum, { cutDays, cutStems }) =>
      sum + cutStems.reduce((cut, stems, index) => cut + (cutDays[index] >= first ? stems : 0), 0),
    0,
  );

function lineOf(bed: Bed, sign: string, plantings: readonly PlantingForecast[], weeks: WeekSpan): BedLine {
  const firstDays = plantings.flatMap(({ cutDays }) => cutDays.slice(0, 1));
  return {
    bed,
    sign,
    plantings,
    stems: stemsFrom(plantings, weeks.first),
    firstCut: firstDays.length > 0 ? Math.min(...firstDays) : null,
    colours: colourWeeks(plantings, weeks),
  };
}
