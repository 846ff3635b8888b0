import { type Bed, bedSchema } from "#lib/domain/bed";
import { MEASURES } from "#lib/domain/measures";
import type { Parsed } from "#lib/domain/problem";
import type { Units } from "#lib/domain/words";
import type { FormValues } from "../ui/form-values";

const bedDraftSchema = bedSchema.transform(({ id: _, ...draft }) => draft);

/** A bed as its form says; `before` is the bed as it stands, when there is one. */
export function readBed(values: FormValues, units: Units, before: Bed | undefined): Parsed<Omit<Bed, "id">> {
  const measure = MEASURES[units].length;
  const most = (metres: number) =>
    `more than 0, and at most ${Math.floor(metres * measure.shownPerStored).toLocaleString("en-US")} ${measure.word}`;
  return values.parse(bedDraftSchema, {
    id: before?.id ?? 0,
    name: values.text("name"),
    lengthMetres: values.number("lengthMetres", { measure, before: before?.lengthMetres, range: most(1000) }),
    widthMetres: values.number("widthMetres", { measure, before: before?.widthMetres, range: most(100) }),
    flags: values.texts("flags"),
    noEntryFrom: values.textOrNull("noEntryFrom"),
    noEntryUntil: values.textOrNull("noEntryUntil"),
    note: values.text("note"),
  });
}
