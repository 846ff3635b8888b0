import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { type TallyPlace, talliesAt } from "#db/read/tallies";
import { cut } from "#db/schema/cuts";
import { tally } from "#db/schema/tallies";
import { inFull, parseDay } from "#lib/domain/day";
import type { Cut, CutDraft } from "#lib/domain/records/cut";
import type { Tally } from "#lib/domain/tally";
import { cutsAt, isTheirs, putCut } from "./cuts";
import { counted } from "./known";
import { removeRow } from "./put-row";
import { refuse } from "./refusal";
import {
  correctedInWords,
  countedSince,
  isCorrected,
  NOT_THEIRS,
  placeName,
  putCorrection,
  refuseOthers,
  sumOf,
} from "./tallies";
import { type Written, write } from "./write";

/** What a list that somebody had open showed of a row: they say something of it, and it may reach the farm much later. */
export type SeenRow = TallyPlace & Pick<Tally, "seenStems" | "seenRevision">;

/** Shares stems of a row anew among what is recorded of it. */
type Share = (recorded: readonly Cut[], stemsCut: number) => readonly CutDraft[];

/**
 * Makes of a row's record what somebody says that it really is: of what their list showed; what others have counted since stands beside it [T10]. Refused
 * when nothing is recorded there any more, or the record was corrected since.
 * @param by  who says so, where it is not the owner: what somebody else has counted is refused
 */
export const correctSeen = (
  database: FarmDatabase,
  seen: SeenRow,
  stemsCut: number,
  share: Share,
  by?: string,
): Written =>
  write(database, () => {
    const where = placeName(database, seen);
    const recorded = cutsAt(database, seen);
    if (recorded.length === 0) refuse("stemsCut", "nothing is recorded here any more: record it anew");
    const counts = talliesAt(database, seen);
    refuseCorrected(recorded, counts, seen, `say on the list whether it is ${counted(stemsCut, "stem")}`);
    refuseOthers(counts, by);
    const stems = stemsCut + sumOf(countedSince(counts, seen.seenRevision));
    putCorrection(database, share(recorded, stems), counts);
    return { title: correctedInWords(where, recorded, stems), result: stems };
  });

/**
 * Takes back what a list showed as recorded of a row; what others have counted since stands [T10]. Where nothing is recorded any more there is nothing to
 * do. Refused when the record was corrected since.
 * @param by  who takes it back, where it is not the owner: what somebody else recorded or counted is refused
 */
export const takeBackSeen = (database: FarmDatabase, seen: SeenRow, share: Share, by?: string): Written =>
  write(database, () => {
    const recorded = cutsAt(database, seen);
    if (recorded.length === 0) return { title: "", result: 0 };
    const counts = talliesAt(database, seen);
    refuseCorrected(recorded, counts, seen, "look at it before you take it back");
    if (by !== undefined && !recorded.every(({ id }) => isTheirs(database, id, by))) refuse("stemsCut", NOT_THEIRS);
    const since = countedSince(counts, seen.seenRevision);
    for (const row of counts) if (!row.isApart && !since.includes(row)) removeRow(database, tally, row.id);
    putRest(database, recorded, since, since.length === 0 ? null : sumOf(since), share);
    return {
      title: `took back the record of ${placeName(database, seen)} on ${inFull(parseDay(seen.cutOn))}`,
      result: 0,
    };
  });

/**
 * Takes a count back that somebody sent, and leaves what others have counted beside it. Where it is there no more there is nothing to do. Refused when the
 * record was corrected since.
 * @param tallyId  as taking the count gave it
 * @param by       who takes it back, where it is not the owner: a count of somebody else's is refused
 */
export const takeBackCount = (database: FarmDatabase, tallyId: number, share: Share, by?: string): Written =>
  write(database, () => {
    const row = database.select().from(tally).where(eq(tally.id, tallyId)).get();
    if (!row) return { title: "", result: 0 };
    if (by !== undefined && row.countedBy !== by) refuse("stemsCut", NOT_THEIRS);
    const recorded = cutsAt(database, row);
    const stems = sumOf(recorded) - row.stemsCut;
    const isOfSum = !row.isApart;
    if (isOfSum && (row.correctedAt !== null || stems < 0 || recorded.some(({ goodStems }) => goodStems !== null)))
      refuse("stemsCut", correctedWords(recorded, "look at it before you take a count back"));
    removeRow(database, tally, row.id);
    const others = talliesAt(database, row).filter(({ isApart }) => !isApart);
    if (isOfSum) putRest(database, recorded, others, others.length === 0 && stems === 0 ? null : stems, share);
    return { title: `took back a count of ${counted(row.stemsCut, "stem")}: ${placeName(database, row)}`, result: 0 };
  });

/** Writes what is left of a row's record, by the counts that stand; nothing at all where `stems` is null, as if nobody had recorded it. */
function putRest(
  database: FarmDatabase,
  recorded: readonly Cut[],
  standing: ReturnType<typeof talliesAt>,
  stems: number | null,
  share: Share,
): void {
  const restStands = standing.some((one) => one.restStands);
  if (stems === null) for (const { id } of recorded) removeRow(database, cut, id);
  else for (const draft of share(recorded, stems)) putCut(database, { ...draft, restStands });
}

function refuseCorrected(
  recorded: readonly Cut[],
  counts: ReturnType<typeof talliesAt>,
  seen: SeenRow,
  mend: string,
): void {
  if (isCorrected(recorded, counts, seen)) refuse("stemsCut", correctedWords(recorded, mend));
}

const correctedWords = (recorded: readonly Cut[], mend: string): string =>
  `the record was corrected to ${counted(sumOf(recorded), "stem")} meanwhile: ${mend}`;
