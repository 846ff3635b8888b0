import type { z } from "zod";
import { type Measure, measureIn, shown, toStored } from "../measures";
import { type Parsed, type Problem, problemsOf } from "../problem";
import type { DecimalMark } from "../read-number";
import type { Units } from "../words";
import type { Field, Fields, Limits, RecordOf } from "./field";
import { decimal, type Input } from "./kinds";

/** How the farm shows and types its numbers. */
export type Manner = { readonly units: Units; readonly decimalMark?: DecimalMark };

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
  { units, root = "" }: Manner & { readonly root?: string },
): { readonly [Name in keyof F]: FormField } {
  const entries = Object.entries(fields).map(([name, field]) => {
    const value = record?.[name];
    const shownValues =
      value === undefined || value === null ? [] : written(field, value, measureIn(units, field.measure));
    const options = (field.kind.options ?? []).map((word) => ({ value: word, label: field.meanings?.[word] ?? word }));
    const unit = unitOf(field, units) || undefined;
    const { kind, label, hint } = field;
    return [name, { name: root + name, input: kind.input, label, hint, unit, values: shownValues, options }];
  });
  return Object.fromEntries(entries) as { readonly [Name in keyof F]: FormField };
}

/** The word of the unit that a field is shown in; empty when it has none. */
export const unitOf = (field: Field<unknown>, units: Units): string =>
  field.unit ?? measureIn(units, field.measure).word;

function written(field: Field<unknown>, value: NonNullable<unknown>, measure: Measure): string[] {
  if (field.kind.input === "several" && Array.isArray(value)) return value.map((one) => field.kind.write([one]));
  if (field.kind.input === "number" && typeof value === "number") return [shown(measure, value)];
  return [field.kind.write(value)];
}

/** What was typed into a form, by the name of the control; a FormData is one. */
export type Typed = { getAll(name: string): unknown[] };

/** `before` is the record as it stands: a number whose text still reads as it is shown keeps its value to the last digit. */
export type Reading<F extends Fields> = Manner & {
  readonly before?: Partial<RecordOf<F>>;
  readonly root?: string;
  readonly given?: Partial<RecordOf<F>>;
};

/**
 * The record that a form says, or every problem at once, each at the name of its control. `given` holds the fields that the form does
 * not ask for. `schema` holds the rules over several fields.
 */
export function readForm<F extends Fields>(
  fields: F,
  typed: Typed,
  { units, decimalMark, before = {}, root = "", given = {} }: Reading<F>,
  schema?: z.ZodType<RecordOf<F>>,
): Parsed<RecordOf<F>> {
  const problems: Problem[] = [];
  const record: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(fields)) {
    if (Object.hasOwn(given, name)) {
      record[name] = given[name];
      continue;
    }
    const texts = typed.getAll(root + name).filter((value) => typeof value === "string");
    const read = readField(field, texts, before[name], measureIn(units, field.measure), decimalMark);
    if (read.ok) record[name] = read.value;
    else problems.push({ place: root + name + read.place, message: read.message });
  }
  if (problems.length === 0 && schema) {
    const checked = schema.safeParse(record);
    if (checked.success) return { ok: true, parsed: checked.data };
    return { ok: false, problems: problemsOf(checked.error, root.replace(/\.$/, "")) };
  }
  return problems.length ? { ok: false, problems } : { ok: true, parsed: record as RecordOf<F> };
}

type FieldReading = { ok: true; value: unknown } | { ok: false; place: string; message: string };

function readField(
  field: Field<unknown>,
  texts: readonly string[],
  before: unknown,
  measure: Measure,
  mark: DecimalMark | undefined,
): FieldReading {
  const { kind, schema, limits } = field;
  const text = kind.input === "several" ? texts.join(" / ") : (texts[0]?.trim() ?? "");
  if (text === "" && schema.safeParse(null).success) return { ok: true, value: null };
  if (kind.input === "yes-no") return { ok: true, value: text === "yes" };
  const isNumber = kind.input === "number" || kind.input === "hidden";
  if (isNumber && text === "") return { ok: false, place: "", message: "write a number" };
  if (typeof before === "number" && text === shown(measure, before)) return { ok: true, value: before };
  const reading = measure.shownPerStored === 1 ? kind.read(text, mark) : decimal.read(text, mark);
  if (!reading.ok) return { ok: false, place: "", message: reading.message };
  const value = typeof reading.value === "number" ? toStored(measure, reading.value) : reading.value;
  const checked = schema.safeParse(value);
  if (checked.success) return { ok: true, value: checked.data };
  const [problem] = problemsOf(checked.error);
  const message = limits && measure.shownPerStored !== 1 ? rangeInWords(limits, measure) : problem.message;
  return { ok: false, place: problem.place, message };
}

/** "a percentage from 0 to 100", "more than 0, and at most 3,280 feet": limits in the unit that is typed. */
function rangeInWords({ least, above, most }: Limits, measure: Measure): string {
  const inUnit = (stored: number) => (Math.floor(stored * measure.shownPerStored * 100) / 100).toLocaleString("en-US");
  if (measure.word === "%" && least !== undefined && most !== undefined)
    return `a percentage from ${inUnit(least)} to ${inUnit(most)}`;
  const from =
    above !== undefined ? `more than ${inUnit(above)}` : least !== undefined ? `at least ${inUnit(least)}` : "";
  const to = most !== undefined ? `at most ${inUnit(most)}${measure.word === "$" ? "" : ` ${measure.word}`}` : "";
  return [from, to].filter((part) => part !== "").join(", and ");
}
