import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { SOURCES } from "#lib/domain/catalogue/sources";
import type { Source } from "#lib/domain/catalogue-types";
import { measureIn, shown } from "#lib/domain/measures";
import type { Units } from "#lib/domain/words";

const SOURCE_ID = /\(([A-Z][A-Z0-9-]+)\)/;
const DEGREES = /(?:(\d+(?:\.\d+)?)( up to | to ))?(\d+(?:\.\d+)?) °?([CF])\b/g;

const BUILT_IN: ReadonlySet<string> = new Set(CATALOGUE.flatMap(({ curves }) => curves.map(({ note }) => note)));

/**
 * A note of the catalogue in pieces: its words, and in place of each id in brackets the source that it names. Its degrees are those of the
 * farm's units, rounded to whole ones where they were given in others. A note
 * that is neither of this catalogue nor names a source is the grower's own and stays as she wrote it.
 */
export function noteParts(note: string, units: Units): readonly (string | Source)[] {
  const pieces = note
    .split(SOURCE_ID)
    .map((piece, place) => (place % 2 === 0 ? piece : (SOURCES[piece] ?? `(${piece})`)));
  if (!BUILT_IN.has(note) && pieces.every((piece) => typeof piece === "string")) return [note];
  return pieces
    .map((piece) => (typeof piece === "string" ? inDegrees(piece, units) : piece))
    .filter((piece) => piece !== "");
}

function inDegrees(words: string, units: Units): string {
  const { word } = measureIn(units, "temperature");
  return words.replace(DEGREES, (_, low: string | undefined, between = "", high: string, scale: "C" | "F") => {
    const degrees = (written: string) => asShown(written, scale, units);
    return `${low === undefined ? "" : `${degrees(low)}${between}`}${degrees(high)} ${word}`;
  });
}

function asShown(written: string, scale: "C" | "F", units: Units): string {
  if (scale === (units === "us" ? "F" : "C")) return written;
  const celsius = scale === "C" ? Number(written) : (Number(written) - 32) / 1.8;
  return shown({ ...measureIn(units, "temperature"), decimals: 0 }, celsius);
}
