import type { Colour } from "#lib/domain/words";
import type { BedField, BedLine, WeekSpan } from "./bed-lines";

/** A run of weeks in which a colour is cut, and its share of the bed's plants. */
type MapPlanting = {
  readonly colour: Colour;
  readonly firstWeek: number;
  readonly lastWeek: number;
  readonly share: number;
};

/** A bed as the map draws it, in the units of its picture. */
export type MapBed = {
  readonly id: number;
  readonly name: string;
  /** Its number in the field, where it is written under the bed: the first, every fifth and the last; empty under the others. */
  readonly sign: string;
  readonly isKept: boolean;
  readonly x: number;
  readonly y: number;
  readonly plantings: readonly MapPlanting[];
};

/** Where a field's name stands. */
type MapName = { readonly name: string; readonly x: number; readonly y: number };

/** The farm in plan. */
export type MapPlan = { readonly beds: readonly MapBed[]; readonly names: readonly MapName[]; readonly height: number };

export const MAP_WIDTH = 560;
export const BED_WIDTH = 13.5;
export const BED_HEIGHT = 118;
const STEP = 19;
const NAME_HEIGHT = 30;
const ROW_HEIGHT = BED_HEIGHT + NAME_HEIGHT + 22;
const MOST_A_ROW = Math.floor(MAP_WIDTH / STEP);

/** Lays fields out row by row, beds in their order; a field wider than the map takes several rows. Only names are known, so it shows what lies together and not where. */
export function mapPlan(fields: readonly BedField[], weeks: WeekSpan): MapPlan {
  const beds: MapBed[] = [];
  const names: MapName[] = [];
  let column = 0;
  let row = 0;
  for (const { name, lines } of fields) {
    if (column > 0 && column + Math.min(lines.length, MOST_A_ROW) > MOST_A_ROW) {
      column = 0;
      row++;
    }
    names.push({ name, x: column * STEP, y: row * ROW_HEIGHT + 18 });
    for (const [index, line] of lines.entries()) {
      if (column === MOST_A_ROW) {
        column = 0;
        row++;
      }
      beds.push(mapBed(withSign(line, index, lines.length), weeks, column * STEP, row * ROW_HEIGHT + NAME_HEIGHT));
      column++;
    }
    column++;
  }
  return { beds, names, height: (row + 1) * ROW_HEIGHT };
}

/** A bed by its number: what is no number is written whole, as far as there is room. */
const withSign = (line: BedLine, index: number, count: number): BedLine => {
  const number = Number(line.sign);
  const isWritten = index === 0 || index === count - 1 || Number.isNaN(number) || number % 5 === 0;
  return { ...line, sign: isWritten ? line.sign.slice(0, 3) : "" };
};

function mapBed({ bed, sign, plantings }: BedLine, { first }: WeekSpan, x: number, y: number): MapBed {
  const plants = plantings.reduce((sum, { planting }) => sum + planting.plantCount, 0);
  return {
    id: bed.id,
    name: bed.name,
    sign,
    x,
    y,
    isKept: plantings.some(({ planting }) => planting.treatment === "kept-in-ground"),
    plantings: plantings.flatMap(({ planting, variety, cutDays }) =>
      cutDays.length === 0
        ? []
        : [
            {
              colour: variety.colour,
              firstWeek: Math.floor((cutDays[0] - first) / 7),
              lastWeek: Math.floor((cutDays[cutDays.length - 1] - first) / 7),
              share: plants > 0 ? planting.plantCount / plants : 0,
            },
          ],
    ),
  };
}
