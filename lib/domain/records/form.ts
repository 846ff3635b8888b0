import type { z } from "zod";
import { type Measure, measureIn, shown, toStored } from "../measures";
import { type Parsed, type Problem, problemsOf } from "../problem";
import { type DecimalMark, readNumber, type TextReading } from "../read-number";
import { OWN, type Sourced } from "../sourced";
import type { Units } from "../words";
import type { Writing } from "../writing";
import type { Field, Fields, RecordOf } from "./field";
import type { Input, Kind } from "./kinds";

/** How the farm shows and types its numbers. */
export type Manner = Writing & { readonly units: Units };

/** A field as a form shows it: everything its control must know. `values` are what stands in it, as text; several for "several". */
export type FormField = {
  readonly name: string;
  readonly input: Input;
  readonly label: string;
  readonly unit?: string;
  readonly hint?: string;
  readonly values: readonly string[];
  readonly options: readonly { readonly value: string; readonly label: string }[];
};

/**
 * The fields of a form by name, filled from `record`, which may hold some of them or none. `root` begins the names of the controls:
 * "winter." for "winter.tuberCents".
 */
export function formFields<F extends Fields>(
  fields: F,
  record: Partial<RecordOf<F>> | undefined,
  { units, decimalMark, root = "" }: Manner & { readonly root?: string },
): { readonly [Name in keyof F]: FormField } {
  const entries = Object.entries(fields).map(([name, field]) => {
    const value = record?.[name];
    const shownValues =
      value === undefined || value === null ? [] : written(field, value, measureIn(units, field.measure), decimalMark);
    const none = field.empty === undefined ? [] : [{ value: "", label: field.empty }];
    const words = (field.kind.options ?? []).map((word) => ({ value: word, label: field.meanings?.[word] ?? word }));
    const options = [...none, ...words];
    const unit = unitOf(field, units) || undefined;
    const { kind, label, hint } = field;
    return [name, { name: root + name, input: kind.input, label, hint, unit, values: shownValues, options }];
  });
  return Object.fromEntries(entries) as { readonly [Name in keyof F]: FormField };
}

/** The word of the unit that a field is shown in; empty when it has none. */
const unitOf = (field: Field<unknown>, units: Units): string => field.unit ?? measureIn(units, field.measure).word;

function written(
  { kind, parts }: Field<unknown>,
  value: NonNullable<unknown>,
  measure: Measure,
  mark: DecimalMark | undefined,
): string[] {
  if (parts) return [shown(measure, (value as Sourced).count, mark)];
  const { line } = kind;
  if (line && Array.isArray(value)) return [value.map((one) => line.write(one)).join("\n")];
  if (kind.input === "several" && Array.isArray(value)) return value.map((one) => kind.write([one], mark));
  if (kind.input === "number" && typeof value === "number") return [shown(measure, value, mark)];
  return [kind.write(value, mark)];
}

/** A value as people read it, in the unit that the farm shows: "49.2 feet", "kept in the ground"; "empty" when nothing stands there. */
export function valueInWords(field: Field<unknown>, value: unknown, { units, decimalMark }: Manner): string {
  if (value === null || value === undefined) return "empty";
  const texts = written(field, value, measureIn(units, field.measure), decimalMark);
  const words = texts.map((text) => field.meanings?.[text] ?? text).filter((text) => text !== "");
  const unit = unitOf(field, units);
  if (words.length === 0) return "empty";
  return field.kind.input === "number" && unit ? withUnit(words[0], unit) : `“${words.join(", ")}”`;
}

const withUnit = (number: string, unit: string): string =>
  unit.startsWith("$") ? `$${number}${unit.slice(1)}` : `${number} ${unit}`;

/** What was typed into a form, by the name of the control; a FormData is one. */
export type Typed = { getAll(name: string): unknown[] };

/**
 * `before` is the record as it stands: a number whose text still reads as it is shown keeps its value to the last digit. `given` holds
 * fields that the form does not ask for, `root` begins the names of the controls, `schema` holds the rules over several fields.
 */
export type Reading<F extends Fields> = {
  readonly before?: Partial<RecordOf<F>>;
  readonly given?: Partial<RecordOf<F>>;
  readonly root?: string;
  readonly schema?: z.ZodType<RecordOf<F>>;
};

/** The record that a form says, or every problem at once, each at the name of its control. */
export function readForm<F extends Fields>(
  fields: F,
  typed: Typed,
  manner: Manner,
  { before = {}, given = {}, root = "", schema }: Reading<F> = {},
): Parsed<RecordOf<F>> {
  const problems: Problem[] = [];
  const record: Record<string, unknown> = { ...given };
  for (const [name, field] of Object.entries(fields)) {
    if (Object.hasOwn(given, name)) continue;
    const texts = typed.getAll(root + name).filter((value) => typeof value === "string");
    const read = readField(field, texts, before[name], measureIn(manner.units, field.measure), manner);
    if (read.ok) record[name] = read.value;
    else problems.push({ place: root + name, message: read.message });
  }
  if (problems.length) return { ok: false, problems };
  const checked = schema?.safeParse(record);
  if (checked && !checked.success) return { ok: false, problems: problemsOf(checked.error, root.replace(/\.$/, "")) };
  return { ok: true, parsed: checked ? checked.data : (record as RecordOf<F>) };
}

function readField(
  field: Field<unknown>,
  texts: readonly string[],
  before: unknown,
  measure: Measure,
  writing: Writing,
): TextReading<unknown> {
  const { kind, schema, parts } = field;
  if (parts) return readSourced(parts.count, texts, before as Sourced | undefined, measure, writing);
  const text = textOf(kind.input, texts);
  if (text === "" && schema.safeParse(null).success) return { ok: true, value: null };
  if (typeof before === "number" && text === shown(measure, before, writing.decimalMark))
    return { ok: true, value: before };
  const reading = readTyped(field, text, measure, writing);
  if (!reading.ok) return reading;
  const checked = schema.safeParse(reading.value);
  return checked.success
    ? { ok: true, value: checked.data }
    : { ok: false, message: refusalOf(field, measure, checked.error) };
}

/** A number that is not touched keeps its origin; any other is the farm's own. */
function readSourced(
  count: Field<number>,
  texts: readonly string[],
  before: Sourced | undefined,
  measure: Measure,
  writing: Writing,
): TextReading<unknown> {
  const read = readField(count, texts, before?.count, measure, writing);
  if (!read.ok) return read;
  return { ok: true, value: before && read.value === before.count ? before : { count: read.value, ...OWN } };
}

/** Words chosen or typed one beside another as one list; what is typed last may still be open. */
const textOf = (input: Input, texts: readonly string[]): string =>
  input === "several" ? texts.join(" / ").replace(/^[\s,;/]+|[\s,;/]+$/g, "") : (texts[0]?.trim() ?? "");

function readTyped({ kind }: Field<unknown>, text: string, measure: Measure, writing: Writing): TextReading<unknown> {
  if (kind.input === "yes-no") return { ok: true, value: text === "yes" };
  if (kind.line) return readLines(kind.line, text);
  const isNumber = kind.input === "number" || kind.input === "hidden";
  if (isNumber && text === "") return { ok: false, message: "write a number" };
  if (measure.shownPerStored === 1) return kind.read(text, writing);
  const reading = readNumber(text, writing.decimalMark);
  return reading.ok ? { ok: true, value: toStored(measure, reading.value) } : reading;
}

function readLines(line: NonNullable<Kind<unknown>["line"]>, text: string): TextReading<unknown> {
  const lines = text.split(/\s*\n\s*/).filter((written) => written !== "");
  const readings = lines.map((written) => line.read(written));
  const wrong = readings.flatMap((reading) => (reading.ok ? [] : [reading.message]));
  if (wrong.length > 0) return { ok: false, message: wrong.join("; ") };
  return { ok: true, value: readings.flatMap((reading) => (reading.ok ? [reading.value] : [])) };
}

/** The schema's own words, or the limits in the unit that is typed: "a percentage from 0 to 100", "more than 0, and at most 3,280 feet". */
function refusalOf({ limits }: Field<unknown>, measure: Measure, error: z.ZodError): string {
  if (!limits || measure.shownPerStored === 1)
    return [...new Set(error.issues.map(({ message }) => message))].join("; ");
  const { least, above, most } = limits;
  const { shownPerStored, shownAtZero = 0 } = measure;
  const inUnit = (stored: number) =>
    (Math.floor((stored * shownPerStored + shownAtZero) * 100) / 100).toLocaleString("en-US");
  if (measure.word === "%" && least !== undefined && most !== undefined)
    return `a percentage from ${inUnit(least)} to ${inUnit(most)}`;
  const from = above !== undefined ? `more than ${inUnit(above)}` : `at least ${inUnit(least ?? 0)}`;
  return most === undefined
    ? from
    : `${from}, and at most ${inUnit(most)}${measure.word === "$" ? "" : ` ${measure.word}`}`;
}
