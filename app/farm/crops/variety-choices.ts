import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { Option } from "../../ui/form-fields.client";

const byName = new Intl.Collator("en", { numeric: true });

/** Every variety to choose from, "Dahlia Maple Row (white)", by name. */
export function varietyChoices({ varieties, crops }: Pick<Snapshot, "varieties" | "crops">): Option[] {
  const cropOf = new ById("crop", crops);
  return varieties
    .map(({ id, cropId, name, colour }) => ({
      value: String(id),
      label: `${cropOf.get(cropId).name} ${name} (${colour})`,
    }))
    .sort((a, b) => byName.compare(a.label, b.label));
}
