import type { Parsed } from "#lib/domain/problem";
import type { Manner } from "#lib/domain/records/form";
import { PLANTING, type Planting, type PlantingDraft } from "#lib/domain/records/planting";
import { VARIETY, type Variety } from "#lib/domain/records/variety";
import type { FormValues } from "../../ui/form-values";

/** A planting as its form says. With a new variety, that one must be written first, and its id put in. */
export type PlantingForm = { readonly planting: PlantingDraft; readonly newVariety?: Omit<Variety, "id"> };

/** A planting as its form says; `before` is the planting as it stands, when there is one. */
export function readPlanting(values: FormValues, manner: Manner, before: Planting | undefined): Parsed<PlantingForm> {
  const isNew = values.text("varietyId") === "new";
  if (values.text("varietyId") === "") values.refuse("varietyId", "choose a variety, or add a new one");
  // A new variety has no id yet.
  const planting = values.record(PLANTING, manner, { before, given: isNew ? { varietyId: 0 } : {} });
  if (!isNew) return planting.ok ? { ok: true, parsed: { planting: planting.parsed } } : planting;
  const cropId = values.hiddenNumber("cropId");
  const newVariety = values.record(VARIETY, manner, { root: "newVariety.", given: { cropId } });
  return planting.ok && newVariety.ok
    ? { ok: true, parsed: { planting: planting.parsed, newVariety: newVariety.parsed } }
    : values.refusal();
}
