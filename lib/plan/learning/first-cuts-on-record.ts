import type { Day } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { FirstCut } from "#lib/domain/records/first-cut";
import type { Snapshot } from "#lib/domain/snapshot";
import type { RecordedFirstCut } from "./recorded-seasons";

/** A first cut, with the day that its plants were set out where it was told. */
export type PlantedFirstCut = RecordedFirstCut & { readonly plantedOn?: Day };

/**
 * The first cuts that were kept for a curve, and the first blooms that were noted of its plantings, with their planting days, in order of both: of a curve of a day of the year
 * one for each year, of one of days after planting one for each planting. What was kept stands in the place of what was noted; of several of a year the earliest counts. Left out are plantings sown in place, which take longer, and a variety that stands twice in a bed in one
 * season, of which a look does not say which it was.
 */
export function firstCutsOnRecord(snapshot: Snapshot, curve: BloomCurve): PlantedFirstCut[] {
  const kept = keptFor(snapshot, curve).map(
    ({ seasonYear, plantedOn, firstCut }): PlantedFirstCut => ({
      year: seasonYear,
      firstCut,
      ...(plantedOn && { plantedOn }),
    }),
  );
  const isPlanted = curve.anchor.kind === "days-after-planting";
  const isKept = ({ year, plantedOn }: PlantedFirstCut) =>
    kept.some((one) => (isPlanted ? one.plantedOn === plantedOn : one.year === year));
  const all = [...kept, ...firstBlooms(snapshot, curve).filter((bloom) => !isKept(bloom))].sort((a, b) =>
    a.firstCut < b.firstCut ? -1 : a.firstCut > b.firstCut ? 1 : 0,
  );
  if (isPlanted) return all;
  return all.filter(({ year }, index) => all.findIndex((other) => other.year === year) === index);
}

/** The first cuts that were kept for a curve: those of its crop and way of growing, or of its variety alone. */
export const keptFor = ({ firstCuts }: Pick<Snapshot, "firstCuts">, curve: BloomCurve): FirstCut[] =>
  firstCuts.filter(
    ({ cropId, varietyId, treatment }) =>
      cropId === curve.cropId &&
      treatment === curve.treatment &&
      (curve.varietyId === null || curve.varietyId === varietyId),
  );

function firstBlooms(snapshot: Snapshot, curve: BloomCurve): PlantedFirstCut[] {
  const cropOf = new Map(snapshot.varieties.map(({ id, cropId }) => [id, cropId]));
  const places = new Map<string, number>();
  const placeOf = (year: number, bedId: number, varietyId: number) => `${year} ${bedId} ${varietyId}`;
  for (const { seasonYear, bedId, varietyId } of snapshot.plantings) {
    const place = placeOf(seasonYear, bedId, varietyId);
    places.set(place, (places.get(place) ?? 0) + 1);
  }
  const bloomedOn = new Map<string, Day>();
  for (const { sign, lookedOn, bedId, varietyId } of snapshot.budLooks) {
    if (sign !== "first bloom") continue;
    const place = placeOf(Number(lookedOn.slice(0, 4)), bedId, varietyId);
    const known = bloomedOn.get(place);
    if (known === undefined || lookedOn < known) bloomedOn.set(place, lookedOn);
  }
  return snapshot.plantings
    .filter(
      ({ varietyId, treatment, sown }) =>
        !sown &&
        treatment === curve.treatment &&
        cropOf.get(varietyId) === curve.cropId &&
        (curve.varietyId === null || curve.varietyId === varietyId),
    )
    .flatMap(({ seasonYear, bedId, varietyId, plantedOn }): PlantedFirstCut[] => {
      const place = placeOf(seasonYear, bedId, varietyId);
      const firstCut = bloomedOn.get(place);
      return firstCut && places.get(place) === 1 ? [{ year: seasonYear, plantedOn, firstCut }] : [];
    });
}
