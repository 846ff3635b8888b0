import { WEEKDAYS } from "#lib/domain/day";
import { MARKS, type Origin } from "#lib/domain/sourced";
import { nearestName } from "./nearest-name";

/** What a cell says, or what is wrong with it and how to mend it. */
export type CellReading<T> = { ok: true; value: T } | { ok: false; message: string };

/**
 * A kind of cell. `hint` says what to write in it; `read` gets the text without spaces around it, or exactly as it stands when the
 * kind keeps spaces. Limits are not its business: the schemas of lib/domain hold them.
 */
export type Cell<T> = {
  readonly hint: string;
  readonly keepsSpaces?: boolean;
  readonly read: (text: string) => CellReading<T>;
};

const value = <T>(read: T): CellReading<T> => ({ ok: true, value: read });
const wrong = (message: string): CellReading<never> => ({ ok: false, message });

/** A name or a word, without the spaces around it. */
export const word: Cell<string> = { hint: "a name", read: value };

/** Free text, kept exactly. */
export const prose: Cell<string> = { hint: "a few words", keepsSpaces: true, read: value };

/** A day; the schema says whether there is such a day. */
export const day: Cell<string> = { hint: "a day as YYYY-MM-DD, for example 2027-06-12", read: value };

/** A day of any year; the schema says whether there is such a day. */
export const monthDay: Cell<string> = { hint: "a day of the year as MM-DD, for example 10-18", read: value };

/** A number with a decimal point: "12.5", "-3", "1e-7". Never guesses what a comma meant. */
export const decimal: Cell<number> = {
  hint: "a number, for example 12.5",
  read: (text) => {
    if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) && Number.isFinite(Number(text))) return value(Number(text));
    if (/^[+-]?\d+(\.\d+)?\s*%$/.test(text))
      return wrong(
        `"${text}" is a percentage: write it as a share, ${Number((Number.parseFloat(text) / 100).toFixed(8))}`,
      );
    if (/^[+-]?\d+,\d+$/.test(text))
      return wrong(
        `"${text}" has a comma: write ${text.replace(",", ".")} for a decimal or ${text.replace(",", "")} for a whole`,
      );
    return wrong(`"${text}" is not a number: write digits alone, with a point for decimals, for example 12.5`);
  },
};

/** A whole number. */
export const whole: Cell<number> = {
  hint: "a whole number, for example 40",
  read: (text) => {
    const number = decimal.read(text);
    if (!number.ok || Number.isInteger(number.value)) return number;
    return wrong(`"${text}" is not a whole number: write ${Math.round(number.value)} or another whole number`);
  },
};

/** Yes or no, as people and spreadsheets write it. */
export const yesNo: Cell<boolean> = {
  hint: "yes or no",
  read: (text) => {
    if (/^(yes|y|true)$/i.test(text)) return value(true);
    if (/^(no|n|false)$/i.test(text)) return value(false);
    return wrong(`"${text}" is neither yes nor no: write one of the two`);
  },
};

/** One of a list of words; letter case, and hyphens for spaces, make no difference. */
export function choice<const T extends string>(words: readonly T[]): Cell<T> {
  const plain = (text: string) => text.toLowerCase().replace(/[\s_-]+/g, " ");
  return {
    hint: `one of: ${words.join(", ")}`,
    read: (text) => {
      const found = words.find((candidate) => plain(candidate) === plain(text));
      if (found !== undefined) return value(found);
      const nearest = nearestName(text, words);
      const guess = nearest === undefined ? "" : `; did you mean "${nearest}"?`;
      return wrong(`"${text}" is not known here: write one of ${words.join(", ")}${guess}`);
    },
  };
}

/**
 * Several of one kind, parted by "/"; an empty cell is an empty list. A slash that belongs to a word is written "\/", and a backslash
 * "\\". An empty place between two slashes is a problem: dropping it would shift what follows.
 */
export function listOf<T>(cell: Cell<T>): Cell<T[]> {
  return {
    hint: `${cell.hint} (several are parted by "/")`,
    read: (text) => {
      const found: T[] = [];
      const problems: string[] = [];
      for (const part of splitList(text)) {
        const reading: CellReading<T> = part
          ? cell.read(part)
          : wrong(`an empty place in "${text}": write ${cell.hint} between the slashes, or take one slash out`);
        if (reading.ok) found.push(reading.value);
        else problems.push(reading.message);
      }
      return problems.length ? wrong(problems.join("; ")) : value(found);
    },
  };
}

function splitList(text: string): string[] {
  const parts = [""];
  for (const [piece] of text.matchAll(/\\[\\/]|[\s\S]/g)) {
    if (piece === "/") parts.push("");
    else parts[parts.length - 1] += piece.length === 2 ? piece.slice(1) : piece;
  }
  return text === "" ? [] : parts.map((part) => part.trim());
}

/** Weekdays by name, short or in full; Monday is 1 and Sunday 7. */
export const weekday: Cell<number> = {
  hint: `a weekday, one of ${WEEKDAYS.join(", ")}`,
  read: (text) => {
    const full = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];
    const index = full.findIndex((name) => text.length >= 2 && name.startsWith(text.toLowerCase()));
    return index >= 0 ? value(index + 1) : wrong(`"${text}" is not a weekday: write one of ${WEEKDAYS.join(", ")}`);
  },
};

/** Where a number comes from: "published: DOLE-DAHLIA", "common practice". */
export const origin: Cell<Origin> = {
  hint: 'where the number comes from, for example "own", "common practice" or "published: SOURCE"',
  read: (text) => {
    const colon = text.indexOf(":");
    const mark = choice(MARKS).read((colon < 0 ? text : text.slice(0, colon)).trim());
    if (!mark.ok) return mark;
    return value({ mark: mark.value, source: colon < 0 ? null : text.slice(colon + 1).trim() });
  },
};
