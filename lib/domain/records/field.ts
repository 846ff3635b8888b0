import { z } from "zod";
import type { MeasureName } from "../measures";
import { type Origin, OWN, originSchema } from "../sourced";
import { decimal, type Kind, origin, reference, whole } from "./kinds";

/**
 * A field of a record, said once. From it are made: its place in the record's schema and type, its column on a sheet (read and written),
 * its control on a form and the reading of it, and the words for a change of it. Its column in the tables is written out in db/schema.
 */
export type Field<T> = {
  /** What the value must be. Its limits are in the unit that is stored. */
  readonly schema: z.ZodType<T>;
  readonly kind: Kind<NonNullable<T>>;
  /** What people call it. */
  readonly label: string;
  /** One sentence beside its control. */
  readonly hint?: string;
  /** Its column on a sheet; its name in snake case when it is left out. */
  readonly heading?: string;
  /** What an empty cell means, or a sheet without the column. Left out: the column must be there and filled. */
  readonly absent?: T;
  /** What it is measured in, when it is shown in another unit than it is stored in. */
  readonly measure?: MeasureName;
  /** The word of its unit, when `measure` gives none. */
  readonly unit?: string;
  /** The least, most and excluded least of a number, in the stored unit. */
  readonly limits?: Limits;
  /** The two columns of a number that carries its origin. */
  readonly parts?: { readonly count: Field<number>; readonly origin: Field<Origin> };
  /** What it means that nothing is chosen, where that may be. */
  readonly empty?: string;
  /** What its words mean, where they are shown as a sentence. */
  readonly meanings?: Readonly<Record<string, string>>;
};

/** The fields of a record by name, in the order of its sheet. */
export type Fields = Readonly<Record<string, Field<unknown>>>;

/** What a record of these fields is. */
export type RecordOf<F extends Fields> = { -readonly [Name in keyof F]: F[Name] extends Field<infer T> ? T : never };

/** The schema of a record. Rules over several fields are refined onto it. */
export function recordSchema<F extends Fields>(fields: F) {
  const shape = Object.fromEntries(Object.entries(fields).map(([name, { schema }]) => [name, schema]));
  return z.object(shape as { [Name in keyof F]: z.ZodType<RecordOf<F>[Name]> });
}

/** The schema of a record that an earlier version may have kept: a field that was not asked for then is what an empty cell means. */
export function keptSchema<F extends Fields>(fields: F) {
  const shape = Object.fromEntries(
    Object.entries(fields).map(([name, { schema, absent }]) => [
      name,
      absent === undefined ? schema : schema.default(absent),
    ]),
  );
  return z.object(shape as { [Name in keyof F]: z.ZodType<RecordOf<F>[Name]> });
}

/** What a field says of itself beside its kind and schema. */
export type About<T> = Omit<Field<T>, "schema" | "kind" | "limits" | "parts">;

export const field = <T>(
  kind: Kind<NonNullable<NoInfer<T>>>,
  schema: z.ZodType<T>,
  about: About<NoInfer<T>>,
): Field<T> => ({
  kind,
  schema,
  ...about,
});

/** The field, which may also be left open: null when it is empty. */
export const open = <T>(of: Field<T>, about: Partial<About<T | null>> = {}): Field<T | null> => ({
  ...of,
  schema: of.schema.nullable(),
  absent: null,
  ...about,
});

export type Limits = { readonly least?: number; readonly above?: number; readonly most?: number };

/** A number within limits, in stored units. `of` names what is counted: "stems", "days". */
type NumberAbout = About<number> & Limits & { readonly of?: string; readonly isWhole?: boolean };

export const number = (about: NumberAbout): Field<number> => limited(decimal, z.number("write a number"), about);

/** A whole number. */
export const count = (about: NumberAbout): Field<number> =>
  limited(whole, z.int(`write whole ${about.of ?? "numbers"}`), about);

/** From 0 to 1, shown as a percentage. */
export function share(about: About<number>): Field<number> {
  const words = "a share from 0 to 1";
  const schema = z.number("write a share").min(0, words).max(1, words);
  return { kind: decimal, schema, measure: "percent", limits: { least: 0, most: 1 }, ...about };
}

/** A share that is never nothing: a chance by which something is weighed. */
export const likelihood = (about: About<number>): Field<number> => ({
  kind: decimal,
  schema: z.number("write a share from 0 to 1").gt(0, "more than 0").max(1, "at most 1"),
  measure: "percent",
  limits: { above: 0, most: 1 },
  ...about,
});

/** Whole cents, shown as money. */
export const cents = (about: About<number> & Limits): Field<number> =>
  count({ of: "cents", measure: "dollars", least: 0, most: 100_000_000, ...about });

/** The origin of a number, "own" where a sheet does not name another. */
export const originField = (about: About<Origin>): Field<Origin> =>
  field(origin, originSchema, { absent: OWN, ...about });

/**
 * A number with its origin: two columns of a sheet, one control of a form, where a changed number becomes the farm's own. `absent` is the number
 * that a sheet without the column means.
 */
export function sourced({
  originHeading,
  ...about
}: NumberAbout & { readonly originHeading: string }): Field<SourcedNumber> {
  const counted = about.isWhole ? count(about) : number(about);
  const { schema } = counted;
  return {
    ...counted,
    kind: { ...counted.kind, write: ({ count: one }: SourcedNumber, mark) => counted.kind.write(one, mark) },
    schema: z.object({ count: schema, ...originSchema.shape }),
    absent: undefined,
    parts: { count: counted, origin: originField({ label: `Origin of ${about.label}`, heading: originHeading }) },
  };
}
type SourcedNumber = { count: number } & Origin;

/** The id of another row; sheets name that row in columns of their own. */
export const rowId = (label: string): Field<number> => ({ kind: reference, schema: z.int(), label });

function limited(
  kind: Kind<number>,
  plain: z.ZodNumber,
  { least, above, most, of, isWhole: _, ...about }: NumberAbout,
): Field<number> {
  const unit = of ? ` ${of}` : "";
  let schema = plain;
  if (least !== undefined)
    schema = schema.min(least, least === 0 && of ? `${of} cannot be negative` : `at least ${least}${unit}`);
  if (above !== undefined) schema = schema.gt(above, `more than ${above}${unit}`);
  if (most !== undefined) schema = schema.max(most, `at most ${most.toLocaleString("en-US")}${unit}`);
  return { kind, schema, limits: { least, above, most }, ...about };
}

/** The name of a field's column on its sheet. */
export const headingOf = (name: string, { heading }: Pick<Field<unknown>, "heading">): string =>
  heading ?? name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
