import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { planting } from "#db/schema/beds";
import type { CurveDraft } from "#lib/domain/records/curve";
import type { PlantingDraft } from "#lib/domain/records/planting";
import type { Variety } from "#lib/domain/records/variety";
import { TREATMENT_WORDS, type Treatment } from "#lib/domain/words";
import { called, counted, known, notOnFarm } from "./known";
import { insertPlanting, replacePlanting } from "./put-beds";
import { insertVariety, putCurveRow } from "./put-crops";
import { Refusal, Refusals } from "./refusal";
import { type Written, write } from "./write";

/** A variety that comes with its first planting. */
export type NewVariety = Omit<Variety, "id">;

/**
 * Adds a planting and gives its id; a new variety, if given, is added with it and stands in the place of the draft's own, all as one change.
 * Refused when its bed or variety is not on the farm, or the new variety is there already ("newVariety.name").
 */
export const addPlanting = (database: FarmDatabase, given: PlantingDraft, newVariety?: NewVariety): Written =>
  write(database, () => {
    const draft = withVariety(database, given, newVariety);
    refuseUnknownGround(database, draft);
    const result = insertPlanting(database, draft);
    return { title: `planted ${called(database, "planting", result)}`, result };
  });

/** Makes a planting what `draft` says, of a new variety if one is given, as one change. */
export const updatePlanting = (
  database: FarmDatabase,
  id: number,
  given: PlantingDraft,
  newVariety?: NewVariety,
): Written =>
  write(database, () => {
    known(database, "planting", id);
    const draft = withVariety(database, given, newVariety);
    refuseUnknownGround(database, draft);
    replacePlanting(database, id, draft);
    return { title: `changed ${called(database, "planting", id)}`, result: id };
  });

/** The draft of the new variety, which is added; the draft itself when there is none. */
function withVariety(database: FarmDatabase, draft: PlantingDraft, newVariety: NewVariety | undefined): PlantingDraft {
  if (!newVariety) return draft;
  try {
    known(database, "crop", newVariety.cropId, "cropId");
    return { ...draft, varietyId: insertVariety(database, newVariety) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw new Refusal(error.problems.map((problem) => ({ ...problem, place: `newVariety.${problem.place}` })));
  }
}

export const removePlanting = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "planting", id);
    database.delete(planting).where(eq(planting.id, id)).run();
    return { title: `removed ${name}`, result: id };
  });

/**
 * Gives plantings a treatment, all of them as one change: which beds stay in the ground. With `winterSurvivalShare`, they get that
 * expectation too (null: the farm's); without, each keeps its own. Gives the ids back.
 */
export const setTreatment = (
  database: FarmDatabase,
  plantingIds: readonly number[],
  treatment: Treatment,
  { winterSurvivalShare }: { readonly winterSurvivalShare?: number | null } = {},
): Written<readonly number[]> =>
  write(database, () => {
    refuseUnknown(database, plantingIds);
    // A field that is undefined is left as it is.
    for (const id of plantingIds)
      database.update(planting).set({ treatment, winterSurvivalShare }).where(eq(planting.id, id)).run();
    const only = plantingIds.length === 1 ? called(database, "planting", plantingIds[0]) : undefined;
    return {
      title: `${only ?? counted(plantingIds.length, "planting")}: ${TREATMENT_WORDS[treatment]}`,
      result: plantingIds,
    };
  });

/** What a grower says of a season of plantings, apart from all others. */
type SaidOfSeason = Pick<PlantingDraft, "daysLate" | "yieldFactor">;

/** Says the same of the season of some plantings, all of them as one change under the title given; null takes back what was said. Gives the ids back. */
export const sayOfSeason = (
  database: FarmDatabase,
  title: string,
  plantingIds: readonly number[],
  { daysLate, yieldFactor }: SaidOfSeason,
): Written<readonly number[]> =>
  write(database, () => {
    refuseUnknown(database, plantingIds);
    for (const id of plantingIds)
      database.update(planting).set({ daysLate, yieldFactor }).where(eq(planting.id, id)).run();
    return { title, result: plantingIds };
  });

function refuseUnknown(database: FarmDatabase, plantingIds: readonly number[]): void {
  const problems = plantingIds.flatMap((id, index) =>
    called(database, "planting", id) === undefined
      ? [{ place: `plantingIds[${index}]`, message: notOnFarm("planting") }]
      : [],
  );
  if (problems.length) throw new Refusal(problems);
}

/** A planting that is carried over, with the bloom curves that are its alone, if any. */
type CarriedOver = PlantingDraft & { readonly ownCurves?: readonly Omit<CurveDraft, "plantingId">[] };

/**
 * Adds the plantings of a coming season that were carried over from an earlier one with their own curves, all of them as one change, and gives their ids.
 * What is carried, and how, is the caller's to say. Throws RangeError when a planting is not of `toSeasonYear`.
 */
export const carryPlantings = (
  database: FarmDatabase,
  fromSeasonYear: number,
  toSeasonYear: number,
  plantings: readonly CarriedOver[],
): Written<readonly number[]> => {
  const stray = plantings.find(({ seasonYear }) => seasonYear !== toSeasonYear);
  if (stray)
    throw new RangeError(`plantings carried to ${toSeasonYear} must be of that season, got ${stray.seasonYear}`);
  return write(database, () => {
    const result = insertPlantings(
      database,
      plantings.map(({ ownCurves: _, ...draft }) => draft),
    );
    for (const [index, { ownCurves = [] }] of plantings.entries())
      for (const curve of ownCurves) putCurveRow(database, { ...curve, plantingId: result[index] });
    return {
      result,
      title: `carried ${counted(plantings.length, "planting")} from ${fromSeasonYear} to ${toSeasonYear}`,
    };
  });
};

/** Adds plantings inside a change that is open and gives their ids. Every refusal is told at once. */
export function insertPlantings(database: FarmDatabase, plantings: readonly PlantingDraft[]): number[] {
  const refusals = new Refusals();
  plantings.forEach((draft, index) => {
    refusals.gather(`plantings[${index}]`, () => refuseUnknownGround(database, draft));
  });
  refusals.end();
  return plantings.map((draft) => insertPlanting(database, draft));
}

/** Refuses a planting whose bed or variety is not on the farm; both are told. */
export function refuseUnknownGround(database: FarmDatabase, { bedId, varietyId }: PlantingDraft): void {
  const problems = [
    ...(called(database, "bed", bedId) === undefined ? [{ place: "bedId", message: notOnFarm("bed") }] : []),
    ...(called(database, "variety", varietyId) === undefined
      ? [{ place: "varietyId", message: notOnFarm("variety") }]
      : []),
  ];
  if (problems.length) throw new Refusal(problems);
}
