import { MONTHS, WEEKDAYS } from "../day";
import { inQuotes } from "../in-quotes";
import { anyOf } from "../listed";
import { nearestName } from "../nearest-name";
import { readDay, readMonthDay } from "../read-day";
import { type DecimalMark, readNumber, type TextReading, writeNumber } from "../read-number";
import { sameWord } from "../same-word";
import { MARKS, type Origin } from "../sourced";
import { COLOUR_WORDS, type OtherWords } from "../trade-words";
import { COLOURS, type Colour } from "../words";
import type { OwnColour, Writing } from "../writing";

/** The control of a form that a value is typed or chosen in. */
export type Input = "text" | "area" | "number" | "day" | "yes-no" | "choice" | "several" | "lines" | "hidden";

/**
 * How a value is written as text, in a cell and in a form. `hint` says what to write; `read` gets the text without spaces around it, or
 * exactly as it stands when the kind keeps spaces. Limits are not its business: the field's schema holds them. What `write` gives reads
 * back to the same.
 */
export type Kind<T> = {
  readonly input: Input;
  readonly hint: string;
  readonly keepsSpaces?: boolean;
  /** What can be chosen, as it is written. */
  readonly options?: readonly string[];
  /** What stands on each line, where a form asks for one a line. */
  readonly line?: Pick<Kind<unknown>, "read" | "write">;
  readonly read: (text: string, writing?: Writing) => TextReading<unknown>;
  write(value: T, mark?: DecimalMark): string;
};

const right = <T>(value: T): TextReading<T> => ({ ok: true, value });
const wrong = (message: string): TextReading<never> => ({ ok: false, message });
const asItIs = (text: string): string => text;

/** A name or a word, without the spaces around it. */
export const word: Kind<string> = { input: "text", hint: "a name", read: right, write: asItIs };

/** Free text, kept exactly. */
export const prose: Kind<string> = { ...word, hint: "a few words", keepsSpaces: true };

/** Free text of several lines. */
export const note: Kind<string> = { ...prose, input: "area" };

/** A day; the schema says whether there is such a day. */
export const day: Kind<string> = {
  ...word,
  input: "day",
  hint: "a day as YYYY-MM-DD, for example 2027-06-12",
  read: readDay,
};

/** A day of any year; the schema says whether there is such a day. */
export const monthDay: Kind<string> = {
  ...word,
  hint: "a day of the year as MM-DD, for example 10-18",
  read: readMonthDay,
};

/** A number, read by {@link readNumber}. */
export const decimal: Kind<number> = {
  input: "number",
  hint: "a number, for example 12.5",
  read: (text, writing) => readNumber(text, writing?.decimalMark),
  write: writeNumber,
};

/** A whole number. */
export const whole: Kind<number> = {
  ...decimal,
  hint: "a whole number, for example 40",
  read: (text, writing) => {
    const number = readNumber(text, writing?.decimalMark);
    if (!number.ok || Number.isInteger(number.value)) return number;
    return wrong(`${inQuotes(text)} is not a whole number: write ${Math.round(number.value)} or another whole number`);
  },
};

/** The id of another row, which a page writes into its form. Sheets name the row instead. */
export const reference: Kind<number> = { ...whole, input: "hidden" };

/** Yes or no, as people and spreadsheets write it. */
export const yesNo: Kind<boolean> = {
  input: "yes-no",
  hint: "yes or no",
  read: (text) => {
    if (/^(yes|y|true)$/i.test(text)) return right(true);
    if (/^(no|n|false)$/i.test(text)) return right(false);
    return wrong(`${inQuotes(text)} is neither yes nor no: write one of the two`);
  },
  write: (is) => (is ? "yes" : "no"),
};

/**
 * One of a list of words; letter case, hyphens for spaces and one or several make no difference. `others` are words that are as good; one
 * that could be two of the list is refused with both.
 */
export function choice<const T extends string>(
  words: readonly T[],
  others: OtherWords<T> = {},
): Kind<T> & { readonly read: (text: string) => TextReading<T> } {
  const found = new Map<string, T | readonly T[]>(
    Object.entries(others).map(([word, meant]) => [sameWord(word), meant]),
  );
  for (const word of words) found.set(sameWord(word), word);
  return {
    input: "choice",
    hint: `one of: ${words.join(", ")}`,
    options: words,
    read: (text) => {
      const meant = found.get(sameWord(text));
      if (typeof meant === "string") return right(meant);
      if (meant !== undefined) return wrong(`${inQuotes(text)} may be ${anyOf(meant)}: write the one that is meant`);
      const nearest = nearestName(text, words);
      const guess = nearest === undefined ? "" : `; did you mean "${nearest}"?`;
      return wrong(`${inQuotes(text)} is not known here: write one of ${words.join(", ")}${guess}`);
    },
    write: asItIs,
  };
}

const plainColour = choice(COLOURS, COLOUR_WORDS);

/** One of our colours, by its word, another word for it, or a name of the farm's own, which goes before the others. */
export const colour: Kind<Colour> = {
  ...plainColour,
  read: (text, writing) => {
    const own = writing?.ownColours?.length ? coloursByWord(writing.ownColours).get(sameWord(text)) : undefined;
    if (own) return right(own);
    const reading = plainColour.read(text);
    return reading.ok ? reading : wrong(`${reading.message}; or say on the Farm screen which colour it is to you`);
  },
};

/** The farm's own names as they are compared. Made once for each list of them, since every cell with a colour is looked up in it. */
function coloursByWord(own: readonly OwnColour[]): ReadonlyMap<string, Colour> {
  const found = byWord.get(own) ?? new Map(own.map(({ name, colour: ours }) => [sameWord(name), ours]));
  byWord.set(own, found);
  return found;
}

const byWord = new WeakMap<readonly OwnColour[], ReadonlyMap<string, Colour>>();

/** A colour name of the farm's own with ours: "antique rose = pink". */
export const ownColour: Kind<OwnColour> = {
  input: "text",
  hint: 'a name of your own and our colour, for example "antique rose = pink"',
  read: (text) => {
    const [name, ours, ...more] = text.split("=").map((part) => part.trim());
    if (!name || !ours || more.length > 0)
      return wrong(
        `${inQuotes(text)} is not a colour of your own: write it with ours, for example "antique rose = pink"`,
      );
    const reading = plainColour.read(ours);
    return reading.ok ? right({ name, colour: reading.value }) : reading;
  },
  write: ({ name, colour: ours }) => `${name} = ${ours}`,
};

/**
 * Several of one kind, parted by "/"; an empty cell is an empty list. A slash that belongs to a word is written "\/", and a backslash
 * "\\". An empty place between two slashes is a problem: dropping it would move what follows.
 */
export function listOf<T>(kind: Kind<T>): Kind<readonly T[]> {
  return {
    input: kind.options ? "several" : "text",
    hint: `${kind.hint} (several are parted by "/")`,
    options: kind.options,
    read: (text, writing) => {
      const found: unknown[] = [];
      const problems: string[] = [];
      // The words of a fixed list have neither commas nor "and", so people may part them by those.
      for (const part of splitList(kind.options ? text.replace(/[,;&+]|\band\b/gi, "/") : text)) {
        const reading = part
          ? kind.read(part, writing)
          : wrong(`an empty place in ${inQuotes(text)}: write ${kind.hint} between the slashes, or take one slash out`);
        if (reading.ok) found.push(reading.value);
        // The first word that is not on a fixed list is told with the whole list, the others by themselves.
        else problems.push(kind.options && problems.length > 0 ? `${inQuotes(part)} neither` : reading.message);
      }
      if (problems.length === 0) return right(found);
      const more = problems.length > MOST_TOLD ? `; and ${problems.length - MOST_TOLD} more like these` : "";
      return wrong(`${problems.slice(0, MOST_TOLD).join("; ")}${more}`);
    },
    write: (list, mark) => list.map((part) => kind.write(part, mark).replace(/[\\/]/g, "\\$&")).join(" / "),
  };
}

/** Problems of one list that are told one by one. */
const MOST_TOLD = 5;

function splitList(text: string): string[] {
  const parts = [""];
  for (const [piece] of text.matchAll(/\\[\\/]|[\s\S]/g)) {
    if (piece === "/") parts.push("");
    else parts[parts.length - 1] += piece.length === 2 ? piece.slice(1) : piece;
  }
  return text === "" ? [] : parts.map((part) => part.trim());
}

/** Several of one kind, one a line on a form. */
export const linesOf = <T>(kind: Kind<T>): Kind<readonly T[]> => ({ ...listOf(kind), input: "lines", line: kind });

/** Weekdays by name, short or in full; Monday is 1 and Sunday 7. */
export const weekday: Kind<number> = {
  input: "choice",
  hint: `a weekday, one of ${WEEKDAYS.join(", ")}`,
  options: WEEKDAYS,
  read: (text) => {
    const full = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];
    const index = full.findIndex((name) => text.length >= 2 && name.startsWith(text.toLowerCase()));
    return index >= 0
      ? right(index + 1)
      : wrong(`${inQuotes(text)} is not a weekday: write one of ${WEEKDAYS.join(", ")}`);
  },
  write: (weekday) => WEEKDAYS[weekday - 1] ?? "",
};

/** Months by name, short or in full, or by number; January is 1. */
export const month: Kind<number> = {
  input: "choice",
  hint: `a month, one of ${MONTHS.join(", ")}`,
  options: MONTHS,
  read: (text) => {
    const named = text.length >= 3 ? MONTHS.findIndex((name) => name.toLowerCase().startsWith(text.toLowerCase())) : -1;
    const number = named >= 0 ? named + 1 : /^\d{1,2}$/.test(text) ? Number(text) : 0;
    return number >= 1 && number <= MONTHS.length
      ? right(number)
      : wrong(`${inQuotes(text)} is not a month: write one of ${MONTHS.join(", ")}`);
  },
  write: (number) => MONTHS[number - 1] ?? "",
};

/** Where a number comes from: "published: DOLE-DAHLIA", "common practice". */
export const origin: Kind<Origin> = {
  input: "text",
  hint: 'where the number comes from, for example "own", "common practice" or "published: SOURCE"',
  read: (text) => {
    const colon = text.indexOf(":");
    const mark = choice(MARKS).read((colon < 0 ? text : text.slice(0, colon)).trim());
    if (!mark.ok) return mark;
    return right({ mark: mark.value, source: colon < 0 ? null : text.slice(colon + 1).trim() });
  },
  write: ({ mark, source }) => (source === null ? mark : `${mark}: ${source}`),
};
