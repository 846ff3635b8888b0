import type { MeasureName } from "./measures";
import { type DecimalMark, readNumber, type TextReading } from "./read-number";

/** Units that may stand behind a number, each with what one of it is as it is stored: metres, a share, cents. The foot, inch and yard are exact by definition. */
const LENGTHS: Readonly<Record<string, number>> = {
  m: 1,
  metre: 1,
  metres: 1,
  meter: 1,
  meters: 1,
  cm: 0.01,
  ft: 0.3048,
  foot: 0.3048,
  feet: 0.3048,
  "'": 0.3048,
  "’": 0.3048,
  in: 0.0254,
  inch: 0.0254,
  inches: 0.0254,
  '"': 0.0254,
  "”": 0.0254,
  yd: 0.9144,
  yard: 0.9144,
  yards: 0.9144,
};
const UNITS: Partial<Record<MeasureName, Readonly<Record<string, number>>>> = {
  length: LENGTHS,
  depth: LENGTHS,
  percent: { "%": 0.01, percent: 0.01 },
  dollars: { $: 100, dollars: 100, cents: 1, "¢": 1 },
};

const FEET_AND_INCHES = /^(\d+)\s*(?:'|’|ft|feet|foot)\s*(\d+(?:[.,]\d+)?)\s*(?:"|”|in|inch|inches)$/i;

/** No number with its unit is longer, and looking through a text takes the square of its length. */
const MOST_LETTERS = 60;

/**
 * A number with its unit behind it (a dollar sign may stand before): "50 ft", "49' 6\"", "15 m", "12 %", "$1.50", as it is stored. Null where no unit
 * that the measure knows is written: the number is then in the unit of its column or field.
 */
export function readMeasured(
  text: string,
  measure: MeasureName | undefined,
  mark?: DecimalMark,
): TextReading<number> | null {
  const units = measure && UNITS[measure];
  if (!units || text.length > MOST_LETTERS) return null;
  const both = units === LENGTHS ? FEET_AND_INCHES.exec(text) : null;
  if (both) return inTwelveDigits(readNumber(both[2], mark), (inches) => (Number(both[1]) * 12 + inches) * 0.0254);
  const [, sign, digits, unit] = /^(\$?)\s*([+-]?[\d.,]+)\s*(\D*)$/.exec(text) ?? [];
  const stored = units[(sign || unit || "").trim().toLowerCase().replace(/\.$/, "")];
  if (digits === undefined || stored === undefined || (sign && unit.trim())) return null;
  return inTwelveDigits(readNumber(digits, mark), (count) => count * stored);
}

/** 12 % must become 0.12 and not 0.12000000000000001. */
const inTwelveDigits = (reading: TextReading<number>, put: (count: number) => number): TextReading<number> =>
  reading.ok ? { ok: true, value: Number(put(reading.value).toPrecision(12)) } : reading;
