import type { Crop } from "#lib/domain/records/crop";
import type { PlantingForecast } from "#lib/plan/road/forecast";

type Props = { crops: readonly Crop[]; plantings: readonly PlantingForecast[]; cropId: number | null };

/** Shows the beds of one crop alone, among those planted this season. */
export function CropFilter({ crops, plantings, cropId }: Props) {
  const planted = new Set(plantings.map(({ crop }) => crop.id));
  const choices = crops
    .filter(({ id }) => planted.has(id) || id === cropId)
    .sort((a, b) => a.name.localeCompare(b.name));
  if (choices.length < 2 && cropId === null) return null;
  return (
    <form action="/beds" className="row no-print season-filter" aria-label="Beds shown">
      <label htmlFor="crop">Only beds of</label>
      <span>
        <select id="crop" name="crop" key={cropId} defaultValue={cropId ?? ""}>
          <option value="">any crop</option>
          {choices.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </span>
      <button type="submit">Show</button>
      {cropId !== null && <a href="/beds">Show all beds</a>}
    </form>
  );
}
