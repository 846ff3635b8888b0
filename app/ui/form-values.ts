import type { z } from "zod";
import { type Measure, PLAIN, shown, toStored } from "#lib/domain/measures";
import { type Parsed, type Problem, problemsOf } from "#lib/domain/problem";
import { type DecimalMark, readNumber } from "#lib/domain/read-number";
import type { Fields, RecordOf } from "#lib/domain/records/field";
import { type Manner, type Reading, readForm } from "#lib/domain/records/form";
import { sentForm } from "../door/sent-form";
import type { FormState } from "./form-state";

type NumberReading = { measure?: Measure; before?: number | null; range?: string };

/**
 * What a form holds, read field by field, and what is wrong with it, all at once. A field has the name of the place in the domain that it
 * fills ("winter.tuberCents"), so that every problem of a schema stands beside its field.
 */
export class FormValues {
  readonly #form: FormData;
  readonly #problems = new Map<string, string>();
  readonly #ranges = new Map<string, string>();
  #mark: DecimalMark = "point";

  constructor(form: FormData) {
    this.#form = sentForm(form);
  }

  /** Numbers are read by the farm's decimal mark from here on. */
  readBy(mark: DecimalMark): void {
    this.#mark = mark;
  }

  /** The record that the form says, its fields read by their definitions; every problem is noted here too. */
  record<F extends Fields>(fields: F, manner: Manner, reading?: Reading<F>): Parsed<RecordOf<F>> {
    const read = readForm(fields, this.#form, manner, reading);
    if (!read.ok) for (const { place, message } of read.problems) this.refuse(place, message);
    return read.ok && this.#problems.size === 0 ? read : this.refusal();
  }

  /** What was typed, without spaces around it; empty when there is no such field. */
  text(name: string): string {
    return this.texts(name)[0]?.trim() ?? "";
  }

  texts(name: string): string[] {
    return this.#form.getAll(name).filter((value) => typeof value === "string");
  }

  /** Every field by its name, the first where several have one name. */
  all(): Record<string, string> {
    return Object.fromEntries([...new Set(this.#form.keys())].map((name) => [name, this.text(name)]));
  }

  textOrNull(name: string): string | null {
    return this.text(name) || null;
  }

  isTicked(name: string): boolean {
    return this.text(name) === "yes";
  }

  /** What a field holds as JSON; undefined when it is none. */
  json(name: string): unknown {
    try {
      return JSON.parse(this.text(name));
    } catch {
      return undefined;
    }
  }

  /** A whole number that the page itself wrote into the form: an id, a year. NaN when it is none, which no schema takes. */
  hiddenNumber(name: string): number {
    return this.text(name) === "" ? Number.NaN : Number(this.text(name));
  }

  /**
   * A number in the unit it is shown in, as it is stored. Text that still reads as `before` is shown gives `before` itself, so that saving a
   * form moves no number that was not touched. `range` stands in place of the schema's words where those speak of the stored unit.
   */
  number(name: string, reading: NumberReading = {}): number {
    return this.numberIn(name, this.text(name), reading);
  }

  /** Like {@link number}; null when the field is left empty. */
  numberOrNull(name: string, reading: NumberReading = {}): number | null {
    return this.text(name) === "" ? null : this.number(name, reading);
  }

  /** Several fields of one name, each a number; the problem of the third stands at "name[2]". */
  numbers(name: string): number[] {
    return this.texts(name).map((typed, index) => this.numberIn(`${name}[${index}]`, typed.trim(), {}));
  }

  /** Says that something is wrong with a field. */
  refuse(name: string, message: string): void {
    if (!this.#problems.has(name)) this.#problems.set(name, message);
  }

  /**
   * The candidate as the schema takes it, when nothing is wrong with it nor with any field read so far. `root` is what the names of its
   * fields begin with ("newVariety" for "newVariety.name").
   */
  parse<T>(schema: z.ZodType<T>, candidate: unknown, root = ""): Parsed<T> {
    const parsed = schema.safeParse(candidate);
    if (!parsed.success)
      problemsOf(parsed.error, root).forEach(({ place: path, message }, index) => {
        // A number with its mark has one field, named after the two together.
        const place = path.replace(/\.count$/, "");
        // A rule over several fields speaks no unit: its words stay.
        const isOfOneField = parsed.error.issues[index].code !== "custom";
        this.refuse(place, (isOfOneField ? this.#ranges.get(place) : undefined) ?? message);
      });
    return parsed.success && this.#problems.size === 0 ? { ok: true, parsed: parsed.data } : this.refusal();
  }

  /** Every problem noted so far. */
  refusal(): { readonly ok: false; readonly problems: readonly Problem[] } {
    return { ok: false, problems: [...this.#problems].map(([place, message]) => ({ place, message })) };
  }

  /** The form given back with its problems and with all that was typed. */
  refused(problems: readonly Problem[]): FormState {
    const typed: Record<string, string[]> = {};
    for (const name of new Set(this.#form.keys())) if (!name.startsWith("$")) typed[name] = this.texts(name);
    return { outcome: "refused", typed, problems };
  }

  private numberIn(name: string, typed: string, { measure = PLAIN, before = null, range }: NumberReading): number {
    if (range) this.#ranges.set(name, range);
    if (before !== null && typed === shown(measure, before, this.#mark)) return before;
    const reading = typed === "" ? ({ ok: false, message: "write a number" } as const) : readNumber(typed, this.#mark);
    if (!reading.ok) this.refuse(name, reading.message);
    return toStored(measure, reading.ok ? reading.value : Number.NaN);
  }
}
