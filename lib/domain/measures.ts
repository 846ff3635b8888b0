import { type DecimalMark, withMark } from "./read-number";
import type { Units } from "./words";

/**
 * How a stored number is shown and typed: `shownPerStored` of its unit `word` to one stored, from `shownAtZero` on (0 when left out). Numbers
 * stored whole (cents, plants) are rounded when they are typed in another unit.
 */
export type Measure = {
  readonly word: string;
  readonly shownPerStored: number;
  readonly shownAtZero?: number;
  readonly decimals: number;
  readonly isStoredWhole?: boolean;
  readonly hasFixedDecimals?: boolean;
};

const METRES_PER_FOOT = 0.3048;
const METRES_PER_INCH = 0.0254;
const METRES_PER_YARD = 0.9144;

export const PLAIN: Measure = { word: "", shownPerStored: 1, decimals: 4 };
export const PERCENT: Measure = { word: "%", shownPerStored: 100, decimals: 2 };
const DOLLARS: Measure = dollarsPer("", 1);

function dollarsPer(what: string, unitsStoredPerShown: number): Measure {
  return {
    word: what ? `$ per ${what}` : "$",
    shownPerStored: unitsStoredPerShown / 100,
    decimals: 2,
    isStoredWhole: true,
    hasFixedDecimals: true,
  };
}

/** The measures of a farm: all is stored in metres, and converted at the edge. The foot, inch and yard are exact by definition. */
export type Measures = {
  readonly length: Measure;
  readonly depth: Measure;
  readonly area: Measure;
  readonly volume: Measure;
  readonly dollarsPerVolume: Measure;
  readonly dollarsPerArea: Measure;
  readonly hoursPerArea: Measure;
  readonly hoursPerVolume: Measure;
  readonly temperature: Measure;
};

/** What a field is measured in: its unit follows from the farm's units. */
export type MeasureName = keyof Measures | "percent" | "dollars";

/** The measure of that name in the farm's units; plain numbers have no name. */
export const measureIn = (units: Units, name: MeasureName | undefined): Measure =>
  name === undefined ? PLAIN : name === "percent" ? PERCENT : name === "dollars" ? DOLLARS : MEASURES[units][name];

const HUNDRED_SQUARE_FEET = 100 * METRES_PER_FOOT ** 2;

export const MEASURES: Record<Units, Measures> = {
  us: {
    length: { word: "feet", shownPerStored: 1 / METRES_PER_FOOT, decimals: 1 },
    depth: { word: "inches", shownPerStored: 1 / METRES_PER_INCH, decimals: 1 },
    area: { word: "square feet", shownPerStored: 1 / METRES_PER_FOOT ** 2, decimals: 0 },
    volume: { word: "cubic yards", shownPerStored: 1 / METRES_PER_YARD ** 3, decimals: 1 },
    dollarsPerVolume: dollarsPer("cubic yard", METRES_PER_YARD ** 3),
    dollarsPerArea: dollarsPer("100 square feet", HUNDRED_SQUARE_FEET),
    hoursPerArea: { word: "hours per 100 square feet", shownPerStored: HUNDRED_SQUARE_FEET, decimals: 2 },
    hoursPerVolume: { word: "hours per cubic yard", shownPerStored: METRES_PER_YARD ** 3, decimals: 2 },
    temperature: { word: "°F", shownPerStored: 1.8, shownAtZero: 32, decimals: 1 },
  },
  metric: {
    length: { word: "metres", shownPerStored: 1, decimals: 2 },
    depth: { word: "centimetres", shownPerStored: 100, decimals: 1 },
    area: { word: "square metres", shownPerStored: 1, decimals: 1 },
    volume: { word: "cubic metres", shownPerStored: 1, decimals: 1 },
    dollarsPerVolume: dollarsPer("cubic metre", 1),
    dollarsPerArea: dollarsPer("square metre", 1),
    hoursPerArea: { word: "hours per square metre", shownPerStored: 1, decimals: 3 },
    hoursPerVolume: { word: "hours per cubic metre", shownPerStored: 1, decimals: 2 },
    temperature: { word: "°C", shownPerStored: 1, decimals: 1 },
  },
};

/** A stored number as a form shows it: "49.2", "6.00", or with the farm's comma "49,2". */
export function shown(
  { shownPerStored, shownAtZero = 0, decimals, hasFixedDecimals }: Measure,
  stored: number,
  mark: DecimalMark = "point",
): string {
  const rounded = (stored * shownPerStored + shownAtZero).toFixed(decimals);
  return withMark(hasFixedDecimals ? rounded : String(Number(rounded)), mark);
}

/** A number that may be left open; empty when it is. */
export const shownOrEmpty = (measure: Measure, stored: number | null, mark?: DecimalMark): string =>
  stored === null ? "" : shown(measure, stored, mark);

/** A typed number as it is stored. */
export function toStored({ shownPerStored, shownAtZero = 0, isStoredWhole }: Measure, typed: number): number {
  // Twelve digits: 7.5 % must become 0.075 and not 0.07500000000000001.
  const stored = Number(((typed - shownAtZero) / shownPerStored).toPrecision(12));
  return isStoredWhole ? Math.round(stored) : stored;
}
