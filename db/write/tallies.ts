import { and, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { revision } from "#db/journal/journal";
import { type TallyPlace, talliesAt } from "#db/read/tallies";
import { tally } from "#db/schema/tallies";
import { inFull, parseDay } from "#lib/domain/day";
import type { Cut, CutDraft } from "#lib/domain/records/cut";
import type { KeptTally, Tally } from "#lib/domain/tally";
import { cutsAt, putCut } from "./cuts";
import { counted, known } from "./known";
import { addRow, changeRow, removeRow } from "./put-row";
import { refuse } from "./refusal";
import { type Written, write } from "./write";

/** Makes of what is recorded at a place, and of what was counted there, the records that say both. */
type AddTally = (
  recorded: readonly Cut[],
  tally: Pick<Tally, "cutOn" | "bedId" | "varietyId" | "asked" | "stemsCut" | "restStands">,
) => readonly CutDraft[];

/**
 * Takes what somebody counted: it is added to what is recorded of the row. Where the record is not what the list had seen and others have counted since, it
 * was corrected meanwhile: then the tally is kept apart, and no sum is touched [T10]. Refused when the bed or variety is not on the farm.
 */
export const recordTally = (
  database: FarmDatabase,
  sent: Tally,
  countedBy: string | null,
  add: AddTally,
): Written<TakenTally> =>
  write(database, () => {
    const where = placeName(database, sent);
    const recorded = cutsAt(database, sent);
    const isApart = isCorrected(recorded, talliesAt(database, sent), sent);
    if (!isApart) for (const draft of add(recorded, sent)) putCut(database, draft);
    const { seenStems: _, seenRevision: __, restStands = false, ...kept } = sent;
    const tallyId = addRow(database, tally, {
      ...kept,
      restStands,
      countedBy,
      isApart,
      takenAt: revision(database),
      correctedAt: null,
    });
    const rest = restStands ? ", the rest left to stand" : "";
    const stems = `${counted(sent.stemsCut, "stem")} cut on ${inFull(parseDay(sent.cutOn))}${rest}: ${where}`;
    return {
      title: isApart ? `kept apart, counted before a correction: ${stems}` : `recorded ${stems}`,
      result: { tallyId, isApart },
    };
  });

/** A tally that was taken, and whether it is kept apart. */
export type TakenTally = { readonly tallyId: number; readonly isApart: boolean };

export const NOT_THEIRS = "somebody else has counted here too: the owner can say what holds";

/**
 * Makes the record of a row what somebody says it is; who counted what stays beside it. Refused when nothing is recorded there.
 * @param by  who corrects it, where it is not the owner: what somebody else has counted is refused
 */
export const correctRecord = (
  database: FarmDatabase,
  place: TallyPlace,
  stemsCut: number,
  share: (recorded: readonly Cut[], stemsCut: number) => readonly CutDraft[],
  by?: string,
): Written =>
  write(database, () => {
    const where = placeName(database, place);
    const recorded = cutsAt(database, place);
    if (recorded.length === 0) refuse("stemsCut", "nothing is recorded here any more: record it anew");
    const counts = talliesAt(database, place);
    refuseOthers(counts, by);
    putCorrection(database, share(recorded, stemsCut), counts);
    return { title: correctedInWords(where, recorded, stemsCut), result: stemsCut };
  });

/** Refuses what somebody who is not the owner says of a row that not they alone have counted. */
export function refuseOthers(counts: readonly Pick<KeptTally, "countedBy">[], by: string | undefined): void {
  if (by !== undefined && !(counts.length > 0 && counts.every(({ countedBy }) => countedBy === by)))
    refuse("stemsCut", NOT_THEIRS);
}

/** Writes the record of a row as it was corrected, inside a change that is open: counts of lists from before it are late from here on. */
export function putCorrection(
  database: FarmDatabase,
  drafts: readonly CutDraft[],
  counts: ReturnType<typeof talliesAt>,
): void {
  for (const draft of drafts) putCut(database, draft);
  const correctedAt = revision(database);
  for (const row of counts) changeRow(database, tally, row.id, { ...row, correctedAt });
}

/** "corrected Mint in bed D4: 9 is now 7 stems" */
export const correctedInWords = (where: string, recorded: readonly Cut[], stemsCut: number): string =>
  `corrected ${where}: ${sumOf(recorded)} is now ${counted(stemsCut, "stem")}`;

/**
 * Adds a tally that was kept apart to the record after all, or takes it away. Refused when it is apart no longer.
 * @param by  who says so, where it is not the owner: a count of somebody else's is refused
 */
export const settleTally = (
  database: FarmDatabase,
  id: number,
  isAdded: boolean,
  add: AddTally,
  by?: string,
): Written =>
  write(database, () => {
    const row = database
      .select()
      .from(tally)
      .where(and(eq(tally.id, id), eq(tally.isApart, true)))
      .get();
    if (!row) return refuse("id", "somebody has settled this count already");
    if (by !== undefined && row.countedBy !== by) refuse("id", NOT_THEIRS);
    const stems = `${counted(row.stemsCut, "stem")}: ${placeName(database, row)}`;
    if (!isAdded) {
      removeRow(database, tally, id);
      return { title: `left out a late count of ${stems}`, result: id };
    }
    const asked = row.asked as Tally["asked"];
    const cutOn = row.cutOn as Tally["cutOn"];
    for (const draft of add(cutsAt(database, row), { ...row, asked, cutOn })) putCut(database, draft);
    changeRow(database, tally, id, { ...row, isApart: false, takenAt: revision(database) });
    return { title: `added a late count of ${stems}`, result: id };
  });

/**
 * Whether the record was corrected since a list was made: on its screen, or by another road, so that it is not what the list had shown and others have
 * counted since. What somebody has graded is a record of its own.
 */
export function isCorrected(
  recorded: readonly Cut[],
  tallies: ReturnType<typeof talliesAt>,
  sent: Pick<Tally, "seenStems" | "seenRevision">,
): boolean {
  const { seenStems, seenRevision } = sent;
  const since = countedSince(tallies, seenRevision);
  return (
    tallies.some(({ correctedAt }) => (correctedAt ?? 0) > seenRevision) ||
    sumOf(recorded) !== seenStems + sumOf(since) ||
    recorded.some(({ goodStems }) => goodStems !== null)
  );
}

/** Counts that are in the record and that a list of this revision did not show. */
export const countedSince = (tallies: ReturnType<typeof talliesAt>, seenRevision: number) =>
  tallies.filter(({ isApart, takenAt }) => !isApart && takenAt > seenRevision);

export const placeName = (database: FarmDatabase, { bedId, varietyId }: TallyPlace): string =>
  `${known(database, "variety", varietyId, "varietyId")} in bed ${known(database, "bed", bedId, "bedId")}`;

export const sumOf = (rows: readonly Pick<KeptTally, "stemsCut">[]): number =>
  rows.reduce((sum, { stemsCut }) => sum + stemsCut, 0);
