import { and, eq, isNull } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { firstCut } from "#db/schema/first-cuts";
import type { FirstCutDraft } from "#lib/domain/records/first-cut";
import { counted, known } from "./known";
import { addRow, changeRow, removeRow } from "./put-row";
import { Refusals, refuse, refuseTwice } from "./refusal";
import { type Written, write } from "./write";

/**
 * Keeps first cuts of past seasons, each in the place of the one of the same crop, variety, treatment, season and planting day, all as one change; gives their ids. Refused
 * when there is none, or a crop or variety is not on the farm.
 */
export const keepFirstCuts = (database: FarmDatabase, drafts: readonly FirstCutDraft[]): Written<readonly number[]> =>
  write(database, () => {
    if (drafts.length === 0) refuse("", "there is no first cut to keep: write one a line");
    const refusals = new Refusals();
    drafts.forEach(({ cropId, varietyId }, index) => {
      refusals.gather(`firstCuts[${index}]`, () => {
        known(database, "crop", cropId, "cropId");
        if (varietyId !== null) known(database, "variety", varietyId, "varietyId");
      });
    });
    refusals.end();
    const names = [...new Set(drafts.map(({ cropId }) => known(database, "crop", cropId)))];
    const title = `kept ${counted(drafts.length, "first cut")} of ${names.length === 1 ? names[0] : counted(names.length, "crop")}`;
    return { title, result: drafts.map((draft) => putFirstCut(database, draft)) };
  });

/** Makes the first cut with this id what `draft` says. Refused when it is gone, or another one says it already. */
export const changeFirstCut = (database: FarmDatabase, id: number, draft: FirstCutDraft): Written =>
  write(database, () => {
    known(database, "first_cut", id);
    replaceFirstCut(database, id, draft);
    return { title: `changed ${known(database, "first_cut", id)}`, result: id };
  });

export const removeFirstCut = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "first_cut", id);
    removeRow(database, firstCut, id);
    return { title: `removed ${name}`, result: id };
  });

/** Makes the first cut with this id what `draft` says, inside a change that is open. Refuses one that another record says already. */
export const replaceFirstCut = (database: FarmDatabase, id: number, draft: FirstCutDraft): void =>
  refuseTwice("firstCut", "this season and planting day have a first cut already: change that one", () =>
    changeRow(database, firstCut, id, draft),
  );

/** Writes a first cut inside a change that is open, in the place of the one that is known by the same; gives its id. */
export function putFirstCut(database: FarmDatabase, draft: FirstCutDraft): number {
  const { cropId, varietyId, treatment, seasonYear, plantedOn } = draft;
  const before = database
    .select({ id: firstCut.id })
    .from(firstCut)
    .where(
      and(
        eq(firstCut.cropId, cropId),
        varietyId === null ? isNull(firstCut.varietyId) : eq(firstCut.varietyId, varietyId),
        eq(firstCut.treatment, treatment),
        eq(firstCut.seasonYear, seasonYear),
        plantedOn === null ? isNull(firstCut.plantedOn) : eq(firstCut.plantedOn, plantedOn),
      ),
    )
    .get();
  if (!before) return addRow(database, firstCut, draft);
  changeRow(database, firstCut, before.id, draft);
  return before.id;
}
