import { inQuotes } from "./in-quotes";

/** What stands between wholes and fractions when the grower writes a number. The other of the two may part thousands. */
export const DECIMAL_MARKS = ["point", "comma"] as const;
export type DecimalMark = (typeof DECIMAL_MARKS)[number];

/** What a text says, or what is wrong with it and how to mend it. */
export type TextReading<T> = { ok: true; value: T } | { ok: false; message: string };

const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
/** "1,200" and "12,000,000": groups of three after a first group that does not start with 0. */
const GROUPED = /^[+-]?[1-9]\d{0,2}(,\d{3})+(\.\d*)?$/;
/** With the decimal comma a point before exactly three digits may part thousands or, as in our own files, be a decimal point. */
const EITHER = /^[+-]?[1-9]\d{0,2}\.\d{3}$/;

/**
 * The number that a text says: the one reader for forms and files, so that what is typed and what is imported mean the same.
 *
 * | written | decimal point | decimal comma |
 * | --- | --- | --- |
 * | `12.` | 12 | 12 |
 * | `1e7` | 10000000, as spreadsheets write it | 10000000 |
 * | `1,200` | 1200 | 1.2 |
 * | `1,5` | refused | 1.5 |
 * | `1.200` | 1.2 | refused: 1200 or 1.2? |
 * | `1.5` | 1.5 | 1.5 |
 * | `1.200,5` | refused | 1200.5 |
 * | `12 %`, `12 stems`, `1 200`, `0x10` | refused | refused |
 *
 * Nothing is guessed: what could be meant in two ways is refused, with both ways to write it.
 */
export function readNumber(text: string, mark: DecimalMark = "point"): TextReading<number> {
  const found = mark === "comma" ? pointed(text) : text;
  if (mark === "comma" && EITHER.test(text))
    return wrong(text, `may be a whole or a fraction: write ${text.replace(".", "")} or ${text.replace(".", ",")}`);
  if (PLAIN.test(found)) return finite(text, Number(found));
  if (GROUPED.test(found)) return finite(text, Number(found.replaceAll(",", "")));
  if (/^[+-]?\d+([.,]\d+)?\s*%$/.test(text))
    return wrong(
      text,
      `is a percentage: write it as a share, ${Number((Number.parseFloat(text.replace(",", ".")) / 100).toFixed(8))}`,
    );
  if (mark === "point" && /^[+-]?\d+,\d+$/.test(text))
    return wrong(
      text,
      `has a comma: write ${text.replace(",", ".")} for a decimal or ${text.replace(",", "")} for a whole`,
    );
  return notANumber(text, mark);
}

/** A number as text that {@link readNumber} reads back to the same, in full. */
export const writeNumber = (number: number, mark: DecimalMark = "point"): string => withMark(String(number), mark);

/** Digits that are written with a decimal point, with the mark instead. */
export const withMark = (digits: string, mark: DecimalMark): string =>
  mark === "comma" ? digits.replace(".", ",") : digits;

/** The text with points and commas exchanged, when the comma is its decimal mark; a lone decimal point stays. */
const pointed = (text: string): string =>
  /,|\..*\./.test(text) ? text.replace(/[.,]/g, (sign) => (sign === "," ? "." : ",")) : text;

const finite = (text: string, value: number): TextReading<number> =>
  Number.isFinite(value) ? { ok: true, value } : notANumber(text, "point");

const wrong = (text: string, message: string): TextReading<never> => ({
  ok: false,
  message: `${inQuotes(text)} ${message}`,
});

const notANumber = (text: string, mark: DecimalMark) =>
  wrong(
    text,
    `is not a number: write digits alone, with a ${mark} for decimals, for example 12${mark === "comma" ? "," : "."}5`,
  );
