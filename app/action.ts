import { createHash } from "node:crypto";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { FarmDatabase } from "#db/client";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { SaveRefused, type Saving, saving } from "#db/journal/saving";
import type { Parsed, Problem } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { sentForm } from "./door/sent-form";
import { rememberOwnSave } from "./frame/own-save";
import { farmDatabase, loadFarm } from "./load";
import { asking } from "./people/who";
import { type FormAction, SAVED } from "./ui/form-state";
import { FormValues } from "./ui/form-values";
import { REVISION, SAVE_KEY } from "./ui/sending";

/** What a form says, parsed: a schema over its fields as they are named, or a reader where that is not enough. */
export type Reader<T> = z.ZodType<T> | ((values: FormValues, farm: Snapshot) => Parsed<T>);

/** What a write answers; `Written` of db/write is one. */
type Outcome<R> = { readonly ok: true; readonly result: R } | Refused;
type Refused = { readonly ok: false; readonly problems: readonly Problem[] };

type Write<T, R> = (database: FarmDatabase, content: T, farm: Snapshot) => Outcome<R>;

/** The page to open after a write; null stays where the form is. */
type Next<T, R> = (result: R, content: T) => string | null;

const NOT_WRITTEN = "something went wrong in the tool, and nothing was saved. Its own window says more";

/**
 * A server action: reads the form, refuses it or writes it, and makes every page again. Whatever is refused comes back as a problem at its
 * field with all that was typed, and so does a write that fails. A refusal by the write often means that the page is behind the farm, so
 * the page is made again then as well.
 */
export const action =
  <T, R = unknown>(schema: Reader<T>, write: Write<T, R>, next: Next<T, R> = () => null): FormAction =>
  async (_, form) => {
    const values = new FormValues(form);
    const outcome = carriedOut(values, saveOf(form), schema, write, next);
    if (outcome.ok || outcome.isBehind) revalidatePath("/", "layout");
    if (!outcome.ok) return { ...values.refused(outcome.problems), isBehind: outcome.isBehind };
    await rememberOwnSave();
    if (outcome.opens !== null) redirect(outcome.opens);
    return SAVED;
  };

function carriedOut<T, R>(values: FormValues, save: Saving, schema: Reader<T>, write: Write<T, R>, next: Next<T, R>) {
  try {
    const farm = loadFarm();
    values.readBy(farm.farm.decimalMark);
    const read = schema instanceof z.ZodType ? values.parse(schema, values.all()) : schema(values, farm);
    if (!read.ok) return { ...read, isBehind: false } as const;
    const database = farmDatabase();
    const written = saving(database, save, () => write(database, read.parsed, farm));
    return written.ok
      ? ({ ok: true, opens: next(written.result, read.parsed) } as const)
      : ({ ...written, isBehind: true } as const);
  } catch (error) {
    if (error instanceof SaveRefused) return { ok: false, problems: error.problems, isBehind: true } as const;
    console.error(error);
    // What is wrong with the file says itself what that means for this save.
    if (error instanceof FarmFileRefused)
      return { ok: false, problems: [{ place: "", message: error.message }], isBehind: false } as const;
    return { ok: false, problems: [{ place: "", message: NOT_WRITTEN }], isBehind: false } as const;
  }
}

/** How a form was sent: by which key, and of which revision of the farm its page was made. */
export function saveOf(sent: unknown): Saving {
  const form = sentForm(sent);
  const fields = [...form].filter(([name]) => !name.startsWith("$"));
  return {
    key: textOf(form, SAVE_KEY) || null,
    fingerprint: fingerprintOf(fields),
    by: asking()?.person?.name ?? null,
    seenRevision: /^\d{1,15}$/.test(textOf(form, REVISION)) ? Number(textOf(form, REVISION)) : null,
  };
}

/** The same for the same content. */
export const fingerprintOf = (content: unknown): string =>
  createHash("sha256").update(JSON.stringify(content)).digest("base64");

const textOf = (form: FormData, name: string): string => {
  const value = form.get(name);
  return typeof value === "string" ? value.slice(0, 100) : "";
};

/** A refusal with one problem. */
export const refusal = (place: string, message: string): Refused => ({ ok: false, problems: [{ place, message }] });

/** Reads nothing but the id that the page wrote into the field `name`. */
export const idIn =
  (name: string) =>
  (values: FormValues): Parsed<number> => ({ ok: true, parsed: values.hiddenNumber(name) });

/** A record as its form says: `id` is null when it is new. */
export type Entry<T> = { readonly id: number | null; readonly draft: T };

/** Reads a record that is new or stands already: `name` is the hidden field of its id, and `read` is given the record as it stands. */
export function readEntry<R extends { readonly id: number }, T>(
  values: FormValues,
  name: string,
  records: readonly R[],
  read: (before: R | undefined) => Parsed<T>,
): Parsed<Entry<T>> {
  const id = values.text(name) === "" ? null : values.hiddenNumber(name);
  const draft = read(records.find((record) => record.id === id));
  return draft.ok ? { ok: true, parsed: { id, draft: draft.parsed } } : draft;
}
