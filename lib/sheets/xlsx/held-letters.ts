/** Letters that XML has no place for, or that it changes when it is read. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: the control characters are what is looked for
const UNWRITABLE = /[\u0000-\u0008\u000B-\u001F\uFFFE\uFFFF]/g;
const HELD = /_x([0-9A-Fa-f]{4})_/g;

/**
 * A text as a cell of a workbook holds it: a letter that XML cannot carry as its number, "_x000D_", and a text that looks like that with its first
 * sign so. Inverse of {@link meantLetters}. Source: ECMA-376 Part 1, 22.9.2.19 (ST_Xstring)
 */
export const heldLetters = (text: string): string =>
  text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_").replace(UNWRITABLE, (letter) => `_x${fourDigits(letter)}_`);

/** What a text in a workbook means: its letters that stand there as numbers, as letters. */
export const meantLetters = (text: string): string =>
  text.includes("_x")
    ? text.replace(HELD, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 16)))
    : text;

const fourDigits = (letter: string): string => letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
