import type { Day } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Snapshot } from "#lib/domain/snapshot";
import type { RecordedFirstCut } from "./recorded-seasons";

/** A first cut, with the day that its plants were set out where it was told. */
export type PlantedFirstCut = RecordedFirstCut & { readonly plantedOn?: Day };

/**
 * The first blooms that were noted of a curve's plantings, with their planting days, in order of both: of a curve of a day of the year the earliest of each
 * year, of one of days after planting each planting's own. Left out are plantings sown in place, which take longer, and a variety that stands twice in a bed in one
 * season, of which a look does not say which it was.
 */
export function firstCutsOnRecord(snapshot: Snapshot, curve: BloomCurve): PlantedFirstCut[] {
  const cropOf = new Map(snapshot.varieties.map(({ id, cropId }) => [id, cropId]));
  const places = new Map<string, number>();
  const placeOf = (year: number, bedId: number, varietyId: number) => `${year} ${bedId} ${varietyId}`;
  for (const { seasonYear, bedId, varietyId } of snapshot.plantings) {
    const place = placeOf(seasonYear, bedId, varietyId);
    places.set(place, (places.get(place) ?? 0) + 1);
  }
  const firstBlooms = new Map<string, Day>();
  for (const { sign, lookedOn, bedId, varietyId } of snapshot.budLooks) {
    if (sign !== "first bloom") continue;
    const place = placeOf(Number(lookedOn.slice(0, 4)), bedId, varietyId);
    const known = firstBlooms.get(place);
    if (known === undefined || lookedOn < known) firstBlooms.set(place, lookedOn);
  }
  const found = snapshot.plantings
    .filter(
      ({ varietyId, treatment, sown }) =>
        !sown &&
        treatment === curve.treatment &&
        cropOf.get(varietyId) === curve.cropId &&
        (curve.varietyId === null || curve.varietyId === varietyId),
    )
    .flatMap(({ seasonYear, bedId, varietyId, plantedOn }): PlantedFirstCut[] => {
      const place = placeOf(seasonYear, bedId, varietyId);
      const firstCut = firstBlooms.get(place);
      return firstCut && places.get(place) === 1 ? [{ year: seasonYear, plantedOn, firstCut }] : [];
    })
    .sort((a, b) => (a.firstCut < b.firstCut ? -1 : a.firstCut > b.firstCut ? 1 : 0));
  if (curve.anchor.kind === "days-after-planting") return found;
  return found.filter(({ year }, index) => found.findIndex((other) => other.year === year) === index);
}
