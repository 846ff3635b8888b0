import {
  answeredTally,
  counted,
  goingOut,
  isOnlyHere,
  isShownBy,
  isTakenBack,
  isWaiting,
  kindOf,
  type SentTally,
  type TallyAnswer,
  toSend,
  type Unsent,
} from "#lib/domain/unsent";
import { oneOf, type RandomSource, wholeBetween } from "#lib/maths/random";
import { type FarmLine, formsIn } from "./farm-line";
import { type Paper, placeOf } from "./paper";

type ListedRow = Pick<SentTally, "cutOn" | "bedId" | "varietyId" | "asked" | "seenStems">;
type List = { readonly revision: number; readonly at: number; readonly rows: readonly ListedRow[] };

/** Rows at the head of a list that the phones of a day count at: few, so that they meet. */
const ROWS_COUNTED = 4;
const MOST_AT_ONCE = 6;

/** Tallies that went out and have not come in yet, and when the lists were made by which they were counted. */
export type Batch = readonly SentTally[];

let keyCount = 0;

/** A phone in the field with Today open: what a page of the tool does there, by the same functions, with a line that may be none. */
export class FieldPhone {
  readonly name: string;
  /** Who is signed in on it; null for nobody. A phone does not know when its session was ended. */
  token: string | null = null;
  unsent: readonly Unsent[] = [];
  #list: List = { revision: 0, at: 0, rows: [] };
  readonly #listAt = new Map<string, number>();

  constructor(name: string) {
    this.name = name;
  }

  /** When the list was made by which a tally was counted. */
  listAt = (key: string): number => this.#listAt.get(key) ?? 0;

  /** Opens the list anew, if it is let in, and looks whether it says what the paper says. Gives what is otherwise. */
  async readsList(line: FarmLine, paper: Paper): Promise<string[]> {
    const { status, body } = await line.ask({ path: "/today", token: this.token });
    if (status !== 200) return [];
    const rowsOf = (action: string) =>
      formsIn(body, "/today", line.idOf(action)).map(({ fields }) => Object.fromEntries(fields));
    const open = rowsOf("saveCut").map((fields) => ({
      ...{ cutOn: fields.cutOn, bedId: Number(fields.bedId), varietyId: Number(fields.varietyId) },
      ...{ asked: JSON.parse(fields.asked), seenStems: Number(fields.seenStems) },
    }));
    const done = rowsOf("correctCut").map((fields) => ({
      ...{ cutOn: fields.cutOn, bedId: Number(fields.bedId), varietyId: Number(fields.varietyId), asked: [] },
      seenStems: Number(fields.stemsCut),
    }));
    const revision = Number(/data-revision="(\d+)"/.exec(body.toString())?.[1]);
    this.#list = { revision, at: paper.next(), rows: open.slice(0, ROWS_COUNTED) };
    const shown = this.unsent.filter((one) => isShownBy(one, revision));
    const gone = new Set(shown.flatMap(({ tally }) => [tally.key, ...(tally.of ? [tally.of.key] : [])]));
    this.unsent = this.unsent.filter(({ tally }) => !gone.has(tally.key));
    return [...open, ...done].flatMap((row) => {
      const stems = paper.stems(placeOf(row));
      return row.seenStems === stems
        ? []
        : [`${this.name} is shown ${row.seenStems} stems of ${placeOf(row)}, and there are ${stems}`];
    });
  }

  /** Somebody counts a row of the list, and now and then leaves the rest to stand. */
  counts(random: RandomSource): void {
    const { rows } = this.#list;
    if (rows.length === 0) return;
    const rest = random() < 0.1 ? { restStands: true } : {};
    this.#says({ ...oneOf(random, rows), stemsCut: wholeBetween(random, 0, 12), ...rest });
  }

  /** Somebody takes back what they counted: on the phone alone where it never left it. */
  takesOneBack(random: RandomSource): void {
    const counts = this.unsent.filter(
      (one) => kindOf(one.tally) === "counted" && one.state !== "refused" && !isTakenBack(one, this.unsent),
    );
    if (counts.length === 0) return;
    const { tally: of, ...one } = oneOf(random, counts);
    if (isOnlyHere({ tally: of, ...one })) this.#keeps(this.unsent.filter(({ tally }) => tally.key !== of.key));
    else this.#says({ ...of, asked: [], stemsCut: 0, kind: "taken back", of });
  }

  get isWaiting(): boolean {
    return this.unsent.some(isWaiting);
  }

  /** What goes out now: from here on the farm may have it. */
  goesOut(): Batch {
    const batch = toSend(this.unsent, MOST_AT_ONCE).map(({ tally }) => tally);
    const keys = new Set(batch.map(({ key }) => key));
    this.#keeps(this.unsent.map((one) => (keys.has(one.tally.key) ? goingOut(one) : one)));
    return batch;
  }

  hears(batch: Batch, answers: readonly TallyAnswer[], revision: number): void {
    const keys = new Set(batch.map(({ key }) => key));
    this.#keeps(this.unsent.map((one) => (keys.has(one.tally.key) ? answeredTally(one, answers, revision) : one)));
  }

  /** Somebody has read what the farm could not take, and puts it away. */
  putsRefusedAway(): void {
    this.#keeps(this.unsent.filter(({ state }) => state !== "refused"));
  }

  #says(said: ListedRow & Pick<SentTally, "stemsCut"> & Partial<SentTally>): void {
    const number = ++keyCount;
    const at = new Date(Date.UTC(2027, 5, 10, 5) + number * 1000).toISOString();
    const tally = { seenRevision: this.#list.revision, ...said, key: `day-${String(number).padStart(8, "0")}` };
    this.#listAt.set(tally.key, said.of ? this.listAt(said.of.key) : this.#list.at);
    this.#keeps([...this.unsent, counted({ ...tally, countedAt: `${at.slice(0, 19)}Z` }, "a row")]);
  }

  #keeps(unsent: readonly Unsent[]): void {
    this.unsent = unsent;
  }
}
