import { type Planting, plantingSchema } from "#lib/domain/bed";
import { type Variety, varietySchema } from "#lib/domain/crop";
import type { PlantingDraft } from "#lib/domain/what-if";
import type { FormValues } from "../../ui/form-values";
import { PERCENT } from "../../ui/units";

const plantingDraftSchema = plantingSchema.omit({ id: true });
const varietyDraftSchema = varietySchema.omit({ id: true });

/** A planting as its form says. With a new variety, that one must be written first, and its id put in. */
export type PlantingForm = { readonly planting: PlantingDraft; readonly newVariety: Omit<Variety, "id"> | null };

const PERCENTAGE = "a percentage from 0 to 100";

/** Parses the form of a planting, or notes every problem in `values`; `before` is the planting as it stands, when there is one. */
export function readPlanting(values: FormValues, before: Planting | undefined): PlantingForm | null {
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
  const newVariety = isNew ? readNewVariety(values) : null;
  if (!planting.ok || newVariety?.ok === false) return null;
  return { planting: planting.parsed, newVariety: newVariety?.ok ? newVariety.parsed : null };
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
