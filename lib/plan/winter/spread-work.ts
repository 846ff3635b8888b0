import { addDays, type Day, isoWeekday } from "#lib/domain/day";
import { apportion } from "#lib/maths/apportion";
import type { WinterStep } from "./winter-steps";

/** A piece of work on its day; of work longer than a day the part that is done on it. */
export type WinterTask = Omit<WinterStep, "due" | "until" | "gapDays"> & { readonly day: Day };

const SUNDAY = 7;
/** Hours that floating point may have lost. */
const SLACK_HOURS = 1e-9;
/** No work is laid over more days: rates that ask for more are a slip of the pen, and what is left then stands on the last. */
const MOST_DAYS = 1000;

/**
 * Lays chains of work over days, from today on: what is due earlier goes first, no day gets more hours than it has, and a Sunday none. Work that fits
 * into a day is done on one; longer work takes what each day has left. Each piece comes after the ones before it in its chain, by its gap at
 * least. What is of no use any more is left out.
 * @param chains       each in order of day
 * @param hoursPerDay  more than 0
 */
export function spreadWork(chains: readonly (readonly WinterStep[])[], hoursPerDay: number, today: Day): WinterTask[] {
  const hours = new DayHours(hoursPerDay);
  const doneOn = new Map<number, Day>();
  return chains
    .flatMap((steps, chain) => steps.map((step) => ({ step, chain })))
    .filter(({ step }) => step.until >= today)
    .sort((a, b) => (a.step.due < b.step.due ? -1 : a.step.due > b.step.due ? 1 : 0))
    .flatMap(({ step, chain }) => {
      const before = doneOn.get(chain);
      const from = latest(step.due, today, before ? addDays(before, step.gapDays) : today);
      // A look at what is not there yet is no work.
      if (step.hours === 0 && step.until < from) return [];
      const parts = hours.take(from, step.hours);
      doneOn.set(chain, parts[parts.length - 1].day);
      return inParts(step, parts);
    })
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

const latest = (...days: readonly Day[]): Day => [...days].sort()[days.length - 1];

type Part = { readonly day: Day; readonly hours: number };

/** The hours that each day has left. */
class DayHours {
  readonly #perDay: number;
  readonly #taken = new Map<Day, number>();

  constructor(perDay: number) {
    this.#perDay = perDay;
  }

  /** Takes so many hours from a day on: on one day if they fit into one, else day after day; work of no hours is done on the day itself. */
  take(from: Day, hours: number): Part[] {
    if (hours <= SLACK_HOURS) return [{ day: from, hours: 0 }];
    const needs = hours <= this.#perDay + SLACK_HOURS ? hours : SLACK_HOURS;
    const parts: Part[] = [];
    let left = hours;
    const last = addDays(from, MOST_DAYS);
    for (let day = from; left > SLACK_HOURS; day = addDays(day, 1)) {
      if (day === last) return [...parts, { day, hours: left }];
      const free = isoWeekday(day) === SUNDAY ? 0 : this.#perDay - (this.#taken.get(day) ?? 0);
      if (free + SLACK_HOURS < needs || free <= SLACK_HOURS) continue;
      const taken = Math.min(left, free);
      this.#taken.set(day, (this.#taken.get(day) ?? 0) + taken);
      parts.push({ day, hours: taken });
      left -= taken;
    }
    return parts;
  }
}

/** A step in the parts of its days: what it takes shared by their hours, clumps whole. */
function inParts(
  { due: _due, until: _until, gapDays: _gap, ...step }: WinterStep,
  parts: readonly Part[],
): WinterTask[] {
  if (parts.length === 1) return [{ ...step, day: parts[0].day }];
  const clumps = apportion(
    step.clumpCount,
    parts.map(({ hours }) => hours),
  );
  return parts.map(({ day, hours }, index) => {
    const share = hours / step.hours;
    return {
      ...step,
      day,
      hours,
      clumpCount: clumps[index],
      leafCubicMetres: step.leafCubicMetres * share,
      tarpSquareMetres: step.tarpSquareMetres * share,
    };
  });
}
