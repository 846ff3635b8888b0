import type { Snapshot } from "#lib/domain/snapshot";

/**
 * Work under way: stopped, it ends with the best it has, and the answer still comes. `wasStopped`: it was, by whomever, so that its answer is not
 * the whole one.
 */
export type Work = {
  readonly answer: Promise<unknown>;
  readonly stop: () => void;
  readonly wasStopped: () => boolean;
};

/** What is called with the progress of work. */
export type Told = (progress: unknown) => void;

type Asking = { readonly work: Work; readonly askers: Set<Told> };
type OfFarm = { readonly asking: Map<string, Asking>; readonly answered: Map<string, unknown> };

/** Answers that are kept for a farm as it stands; a write makes another farm, and the old ones go with the old one. */
const ANSWERS_KEPT = 32;

const OTHERS_WAIT = "Stopped for you. Others still wait for this answer: ask again, and you have it with them.";

/** Kept for the life of the server, across the bundles that Next makes. */
const shared: typeof globalThis & { answersOfFarm?: WeakMap<Snapshot, OfFarm> } = globalThis;

/**
 * Works a question about a farm out once, however many ask it and however often: who asks meanwhile hears the same progress and the same
 * answer, who asks afterwards has it at once. It is stopped only when the last who asked stops; then the last has the best there is.
 * @param question  says all that the answer depends on, the farm aside
 * @param start     begins the work, if it must be begun
 */
export function askedOnce(snapshot: Snapshot, question: string, start: (told: Told) => Work, told: Told): Work {
  const { asking, answered } = ofFarm(snapshot);
  if (answered.has(question)) {
    const answer = answered.get(question);
    keep(answered, question, answer);
    return { answer: Promise.resolve(answer), stop: () => {}, wasStopped: () => false };
  }
  const known = asking.get(question);
  if (known) return joined(asking, question, known, told);
  const askers = new Set<Told>();
  const work = start((progress) => {
    for (const tell of askers) tell(progress);
  });
  const begun = { work, askers };
  asking.set(question, begun);
  work.answer
    .then((answer) => {
      if (!work.wasStopped()) keep(answered, question, answer);
    })
    // Everybody who asked hears of a failure; here it only ends the sharing.
    .catch(() => {})
    .finally(() => forget(asking, question, begun));
  return joined(asking, question, begun, told);
}

/** The answer to a question about a farm, when somebody has asked it and it was worked out to its end; undefined otherwise. */
export const knownAnswer = (snapshot: Snapshot, question: string): unknown => ofFarm(snapshot).answered.get(question);

/** How many questions that begin with a word are answered for a farm: what is shown of such answers changes with it. */
export const answeredCount = (snapshot: Snapshot, word: string): number =>
  [...ofFarm(snapshot).answered.keys()].filter((question) => question.startsWith(`${word} `)).length;

function joined(asking: OfFarm["asking"], question: string, shared: Asking, told: Told): Work {
  const { work, askers } = shared;
  const tell: Told = (progress) => told(progress);
  askers.add(tell);
  let leave = (_: Error) => {};
  const left = new Promise<never>((_, refuse) => {
    leave = refuse;
  });
  const answer = Promise.race([work.answer, left]);
  answer.catch(() => {});
  return {
    answer,
    wasStopped: work.wasStopped,
    stop: () => {
      if (!askers.delete(tell)) return;
      if (askers.size > 0) {
        leave(new Error(OTHERS_WAIT));
        return;
      }
      forget(asking, question, shared);
      work.stop();
    },
  };
}

function forget(asking: OfFarm["asking"], question: string, shared: Asking): void {
  if (asking.get(question) === shared) asking.delete(question);
}

/** The newest last; the oldest go. */
function keep(answered: OfFarm["answered"], question: string, answer: unknown): void {
  answered.delete(question);
  answered.set(question, answer);
  const [oldest] = answered.keys();
  if (answered.size > ANSWERS_KEPT) answered.delete(oldest);
}

function ofFarm(snapshot: Snapshot): OfFarm {
  shared.answersOfFarm ??= new WeakMap();
  const known = shared.answersOfFarm.get(snapshot);
  if (known) return known;
  const fresh: OfFarm = { asking: new Map(), answered: new Map() };
  shared.answersOfFarm.set(snapshot, fresh);
  return fresh;
}
