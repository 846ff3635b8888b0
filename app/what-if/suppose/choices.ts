import { withWeekday, yearOf } from "#lib/domain/day";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { Option } from "../../ui/form-fields.client";

const byName = new Intl.Collator("en", { numeric: true });
const inOrder = (options: Option[]): Option[] => options.sort((a, b) => byName.compare(a.label, b.label));

export const bedOptions = ({ beds }: Snapshot): Option[] =>
  inOrder(beds.map(({ id, name }) => ({ value: String(id), label: name })));

/** Every crop first, then one by one those with a bloom curve. */
export function cropOptions({ crops, curves }: Snapshot): Option[] {
  const withCurve = new Set(curves.map(({ cropId }) => cropId));
  const rows = crops.filter(({ id }) => withCurve.has(id)).map(({ id, name }) => ({ value: String(id), label: name }));
  return [{ value: "", label: "every crop" }, ...inOrder(rows)];
}

/** "Dahlia Maple Row, plum" */
export function varietyOptions({ varieties, crops }: Snapshot): Option[] {
  const cropOf = new ById("crop", crops);
  return inOrder(
    varieties.map(({ id, cropId, name, colour }) => ({
      value: String(id),
      label: `${cropOf.get(cropId).name} ${name}, ${colour}`,
    })),
  );
}

/** "D4: Dahlia Maple Row", for each planting of the season. */
export function plantingOptions({ plantings, varieties, crops, beds }: Snapshot, seasonYear: number): Option[] {
  const varietyOf = new ById("variety", varieties);
  const cropOf = new ById("crop", crops);
  const bedOf = new ById("bed", beds);
  return inOrder(
    plantings
      .filter((planting) => planting.seasonYear === seasonYear)
      .map(({ id, bedId, varietyId, plantCount }) => {
        const { cropId, name } = varietyOf.get(varietyId);
        return {
          value: String(id),
          label: `${bedOf.get(bedId).name}: ${cropOf.get(cropId).name} ${name}, ${plantCount} plants`,
        };
      }),
  );
}

/** "Sat 12 Jun: Client, held", in order of the day. */
export const bookingOptions = ({ bookings }: Snapshot, seasonYear: number): Option[] =>
  bookings
    .filter(({ eventOn }) => yearOf(eventOn) === seasonYear)
    .sort((a, b) => (a.eventOn < b.eventOn ? -1 : 1))
    .map(({ id, client, eventOn, status }) => ({
      value: String(id),
      label: `${withWeekday(eventOn)}: ${client}, ${status}`,
    }));

export const recipeOptions = ({ recipes }: Snapshot): Option[] => [
  { value: "", label: "none" },
  ...recipes.map(({ id, name, unit }) => ({ value: String(id), label: `${name}, per ${unit}` })),
];
