import { type Planting, plantingSchema } from "#lib/domain/bed";
import { PERCENT } from "#lib/domain/measures";
import type { Parsed } from "#lib/domain/problem";
import { type Variety, varietySchema } from "#lib/domain/records/variety";
import type { PlantingDraft } from "#lib/domain/what-if";
import type { FormValues } from "../../ui/form-values";

const plantingDraftSchema = plantingSchema.omit({ id: true });
const varietyDraftSchema = varietySchema.omit({ id: true });

/** A planting as its form says. With a new variety, that one must be written first, and its id put in. */
export type PlantingForm = { readonly planting: PlantingDraft; readonly newVariety?: Omit<Variety, "id"> };

const PERCENTAGE = "a percentage from 0 to 100";

/** A planting as its form says; `before` is the planting as it stands, when there is one. */
export function readPlanting(values: FormValues, before: Planting | undefined): Parsed<PlantingForm> {
  const share = (name: "aliveShare" | "gradeOutShare") =>
    values.number(name, { measure: PERCENT, before: before?.[name], range: PERCENTAGE });
  const isNew = values.text("varietyId") === "new";
  if (!isNew && values.text("varietyId") === "") values.refuse("varietyId", "choose a variety, or add a new one");
  const planting = values.parse(plantingDraftSchema, {
    bedId: values.hiddenNumber("bedId"),
    // A new variety has no id yet.
    varietyId: isNew ? 0 : values.hiddenNumber("varietyId"),
    seasonYear: values.hiddenNumber("seasonYear"),
    treatment: values.text("treatment"),
    plantedOn: values.text("plantedOn"),
    plantCount: values.number("plantCount"),
    aliveShare: share("aliveShare"),
    gradeOutShare: share("gradeOutShare"),
    winterSurvivalShare: values.numberOrNull("winterSurvivalShare", {
      measure: PERCENT,
      before: before?.winterSurvivalShare,
      range: PERCENTAGE,
    }),
    flags: values.texts("flags"),
  });
  if (!isNew) return planting.ok ? { ok: true, parsed: { planting: planting.parsed } } : planting;
  const newVariety = readNewVariety(values);
  return planting.ok && newVariety.ok
    ? { ok: true, parsed: { planting: planting.parsed, newVariety: newVariety.parsed } }
    : values.refusal();
}

const readNewVariety = (values: FormValues) =>
  values.parse(
    varietyDraftSchema,
    {
      cropId: values.hiddenNumber("cropId"),
      name: values.text("newVariety.name"),
      colour: values.text("newVariety.colour"),
    },
    "newVariety",
  );
