import type { SentTally } from "#lib/domain/unsent";

/** A count as the sheet of paper has it. `at` is when it came, in steps of the day. */
type PaperCount = {
  readonly key: string;
  readonly place: string;
  readonly stems: number;
  readonly by: string;
  readonly at: number;
  readonly isApart: boolean;
  isCorrected: boolean;
};
type PaperRow = { stems: number; correctedAt: number; counts: PaperCount[] };

/** A row of a day's list in one word. */
export const placeOf = ({ cutOn, bedId, varietyId }: Pick<SentTally, "cutOn" | "bedId" | "varietyId">): string =>
  `${cutOn} bed ${bedId} variety ${varietyId}`;

/**
 * The second method: the day on a sheet of paper, by the rules that [T10] says in words. A count is added to its row the first time it comes, in the name of
 * whoever sent it; where the row was corrected, or is otherwise than the counter's list can explain, it goes into a column of its own. It knows steps of
 * the day, and neither revisions nor rows of a database.
 */
export class Paper {
  readonly #rows = new Map<string, PaperRow>();
  readonly #come = new Set<string>();
  #now = 0;

  /** A moment later than all before it. */
  next(): number {
    return ++this.#now;
  }

  stems(place: string): number {
    return this.#row(place).stems;
  }

  get rows(): ReadonlyMap<string, Readonly<PaperRow>> {
    return this.#rows;
  }

  /** A count comes in. @param listAt  when the list that it was counted by was made */
  comes(tally: SentTally, by: string, listAt: number): void {
    if (this.#come.has(tally.key)) return;
    this.#come.add(tally.key);
    const row = this.#row(placeOf(tally));
    const since = row.counts.filter(({ at, isApart }) => at > listAt && !isApart);
    const isExplained = row.stems === tally.seenStems + since.reduce((sum, { stems }) => sum + stems, 0);
    const isApart = row.correctedAt > listAt || !isExplained;
    const { key, stemsCut: stems } = tally;
    row.counts.push({ key, place: placeOf(tally), stems, by, at: this.next(), isApart, isCorrected: false });
    if (!isApart) row.stems += stems;
  }

  /** A count is taken back, which comes in before if it has not yet. Gives whether it could be: what was corrected since is not taken back unasked. */
  takesBack(of: SentTally, by: string, listAt: number): boolean {
    this.comes(of, by, listAt);
    const row = this.#row(placeOf(of));
    const count = row.counts.find(({ key }) => key === of.key);
    if (!count) return true;
    if (!count.isApart && count.isCorrected) return false;
    row.counts = row.counts.filter((one) => one !== count);
    if (!count.isApart) row.stems -= count.stems;
    return true;
  }

  /** Somebody says at the machine what a row really is. */
  corrected(place: string, stems: number): void {
    const row = this.#row(place);
    row.stems = stems;
    row.correctedAt = this.next();
    for (const count of row.counts) count.isCorrected = true;
  }

  #row(place: string): PaperRow {
    const row = this.#rows.get(place) ?? { stems: 0, correctedAt: 0, counts: [] };
    this.#rows.set(place, row);
    return row;
  }
}
