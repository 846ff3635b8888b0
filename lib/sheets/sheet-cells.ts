import { WEEKDAYS } from "#lib/domain/day";
import type { Origin } from "#lib/domain/sourced";

/** What a cell says, as text that reads back to the same: numbers in full, empty for null. */
export const yesNo = (is: boolean): string => (is ? "yes" : "no");

/** A number in full: the shortest text that reads back to it. */
export const numberCell = (number: number | null): string => (number === null ? "" : String(number));

/** Several words parted by " / "; a slash or backslash that belongs to a word has a backslash before it. */
export const listCell = (words: readonly (string | number)[]): string =>
  words.map((word) => String(word).replace(/[\\/]/g, "\\$&")).join(" / ");

/** Weekdays by their short names; Monday is 1. */
export const weekdaysCell = (weekdays: readonly number[]): string =>
  listCell(weekdays.map((weekday) => WEEKDAYS[weekday - 1] ?? ""));

/** "published: DOLE-DAHLIA", or the mark alone. */
export const originCell = ({ mark, source }: Origin): string => (source === null ? mark : `${mark}: ${source}`);
