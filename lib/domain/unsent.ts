/**
 * What one person counted of a row of a day's list, or says of what is recorded of it, as a phone sends it. `asked` are stems to cut for each booking, with those recorded before; `seenStems` what the
 * list showed as recorded of the row, and `seenRevision` the farm's last change when the list was made. `countedAt` is a moment in UTC by the phone's clock.
 */
export type SentTally = {
  readonly key: string;
  readonly cutOn: string;
  readonly bedId: number;
  readonly varietyId: number;
  readonly asked: readonly (readonly [bookingId: number, stemsToCut: number])[];
  readonly stemsCut: number;
  /** Whether what was not cut was left for the next picking day. */
  readonly restStands?: boolean;
  readonly seenStems: number;
  readonly seenRevision: number;
  readonly countedAt: string;
  /** What is said of the row; as long as nothing is, so many stems were counted. */
  readonly kind?: TallyKind;
  /** The count that is taken back, as it went out; none where the record is taken back as the list had shown it. */
  readonly of?: SentTally;
};

/** Stems were counted; or the record that the list shows is really so many; or it, or a count, is taken back. */
export type TallyKind = "counted" | "corrected" | "taken back";

export const kindOf = ({ kind = "counted" }: Pick<SentTally, "kind">): TallyKind => kind;

/**
 * A tally on its way. `kept`: nobody has heard of it but this phone. `sent`: it went out, and no answer came, so that the farm may have it. `taken`: the farm
 * has it since its change `revision`, and pages made before do not show it yet. `refused`: the farm cannot take it, for the reasons in `problems`.
 */
export type Unsent = {
  readonly tally: SentTally;
  /** What the row is called: its bed, crop and variety. */
  readonly name: string;
  readonly state: "kept" | "sent" | "taken" | "refused";
  readonly revision: number | null;
  readonly problems: readonly string[];
};

/** What the farm says of a tally. */
export type TallyAnswer = { readonly key: string; readonly problems: readonly string[] };

/** A tally that was counted just now. */
export const counted = (tally: SentTally, name: string): Unsent => ({
  tally,
  name,
  state: "kept",
  revision: null,
  problems: [],
});

/**
 * The tallies that the farm has not answered, the oldest first, and of many the first `most`: sent again they are taken once. A count that was taken back
 * goes out with its taking back alone.
 */
export const toSend = (unsent: readonly Unsent[], most: number): readonly Unsent[] =>
  unsent
    .filter((one) => isWaiting(one) && !isTakenBack(one, unsent))
    .sort((a, b) => (a.tally.countedAt < b.tally.countedAt ? -1 : Number(a.tally.countedAt > b.tally.countedAt)))
    .slice(0, most);

/** Whether the farm has not said yet that it has a tally. */
export const isWaiting = ({ state }: Unsent): boolean => state === "kept" || state === "sent";

/** Whether somebody has taken a count back on this phone, though the farm may have it. */
export const isTakenBack = ({ tally }: Unsent, unsent: readonly Unsent[]): boolean =>
  unsent.some(({ tally: { of }, state }) => state !== "refused" && of?.key === tally.key);

/** A tally that goes out now: from here on the farm may have it, whatever answer comes. */
export const goingOut = (unsent: Unsent): Unsent => ({ ...unsent, state: "sent" });

/** A tally after the farm has answered; as it was when the answer is none of its own. @param revision  the farm's last change at the answer */
export function answeredTally(unsent: Unsent, answers: readonly TallyAnswer[], revision: number): Unsent {
  const answer = answers.find(({ key }) => key === unsent.tally.key);
  if (!answer) return unsent;
  return answer.problems.length > 0
    ? { ...unsent, state: "refused", problems: answer.problems }
    : { ...unsent, state: "taken", revision };
}

/** Whether a page that was made of the farm at this revision shows a tally itself, so that the phone need keep it no longer. */
export const isShownBy = ({ state, revision }: Unsent, pageRevision: number): boolean =>
  state === "taken" && revision !== null && revision <= pageRevision;

/** Whether a tally can be taken back on the phone alone: once it went out, the farm may have it. */
export const isOnlyHere = ({ state }: Unsent): boolean => state === "kept" || state === "refused";

/** A tally as a phone has kept it in its storage; null for what is none. */
export function unsentIn(text: string | null): Unsent | null {
  try {
    const read: unknown = JSON.parse(text ?? "null");
    return isUnsent(read) ? read : null;
  } catch {
    return null;
  }
}

const KINDS: readonly unknown[] = ["counted", "corrected", "taken back"];
const STATES: readonly unknown[] = ["kept", "sent", "taken", "refused"];

function isUnsent(read: unknown): read is Unsent {
  if (!isObject(read) || !isObject(read.tally)) return false;
  const { tally, name, state, revision, problems } = read;
  return (
    isText(tally.key) &&
    isText(tally.cutOn) &&
    isText(tally.countedAt) &&
    [tally.bedId, tally.varietyId, tally.stemsCut, tally.seenStems, tally.seenRevision].every(Number.isSafeInteger) &&
    Array.isArray(tally.asked) &&
    (tally.kind === undefined || KINDS.includes(tally.kind)) &&
    (tally.of === undefined || (isObject(tally.of) && isText(tally.of.key))) &&
    isText(name) &&
    STATES.includes(state) &&
    (revision === null || Number.isSafeInteger(revision)) &&
    Array.isArray(problems) &&
    problems.every(isText)
  );
}

const isObject = (read: unknown): read is Record<string, unknown> => typeof read === "object" && read !== null;
const isText = (read: unknown): read is string => typeof read === "string";
