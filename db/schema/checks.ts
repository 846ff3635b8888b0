import { sql } from "drizzle-orm";
import { type CheckBuilder, check } from "drizzle-orm/sqlite-core";

/**
 * What SQLite itself holds of the domain's rules, so that no path into the file can break them: words of a list, shares, counts, days.
 * Upper limits of taste (at most 60 letters) stay with the domain. A rule lets NULL pass: whether a column may be empty is said by NOT NULL.
 */
export type Rule = { readonly name: string; readonly condition: string };

/** The rules of a table as constraints named after the table and what they hold. */
export const checks = (table: string, ...rules: readonly Rule[]): CheckBuilder[] =>
  rules.map(({ name, condition }) => check(`${table}_${name}`, sql.raw(condition)));

const quoted = (text: string): string => `'${text.replaceAll("'", "''")}'`;

export const oneOf = (column: string, words: readonly string[]): Rule => ({
  name: column,
  condition: `${column} IN (${words.map(quoted).join(", ")})`,
});

export const isYesNo = (column: string): Rule => ({ name: column, condition: `${column} IN (0, 1)` });

export const isNamed = (column: string): Rule => ({ name: column, condition: `${column} <> ''` });

/** 0 to 1. Text sorts after every number in SQLite, so an upper limit is also what keeps text out of a column of numbers. */
export const isShare = (column: string): Rule => ({ name: column, condition: `${column} BETWEEN 0 AND 1` });

/** A number from 0, fractions allowed. */
export const isFromZero = (column: string): Rule => ({ name: column, condition: `${column} BETWEEN 0 AND 1e300` });

/** Any number. Text sorts after every number in SQLite, so the upper limit keeps it out. */
export const isNumber = (column: string): Rule => ({ name: column, condition: `${column} BETWEEN -1e300 AND 1e300` });

/** A number above 0, fractions allowed. */
export const isAboveZero = (column: string): Rule => ({
  name: column,
  condition: `${column} > 0 AND ${column} <= 1e300`,
});

/** A whole number from `least`. */
export const isWholeFrom = (column: string, least: number): Rule => ({
  name: column,
  condition: `${column} BETWEEN ${least} AND 1e15 AND ${column} = CAST(${column} AS INTEGER)`,
});

/** "YYYY-MM-DD", and a day that the calendar has: SQLite's date() turns any other into a different text, or NULL, which only IS tells apart. */
export const isDay = (column: string): Rule => ({
  name: column,
  condition: `${column} GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(${column}) IS ${column}`,
});

/** "MM-DD", a day that every year has. */
export const isMonthDay = (column: string): Rule => ({
  name: column,
  condition: `${column} GLOB '[0-9][0-9]-[0-9][0-9]' AND date('2027-' || ${column}) IS '2027-' || ${column}`,
});

/** A list kept as JSON text, in its order. */
export const isList = (column: string): Rule => ({
  name: column,
  condition: `CASE WHEN json_valid(${column}) THEN json_type(${column}) = 'array' ELSE 0 END`,
});

/** A list as of {@link isList}, or nothing: that rule does not let NULL pass. */
export const isListOrNull = (column: string): Rule => ({
  name: column,
  condition: `CASE WHEN json_valid(${column}) THEN json_type(${column}) = 'array' ELSE ${column} IS NULL END`,
});

/** A rule over several columns, or one of its own kind. */
export const holds = (name: string, condition: string): Rule => ({ name, condition });
