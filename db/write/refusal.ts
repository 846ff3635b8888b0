import type { FarmDatabase } from "#db/client";
import { overfullBookings } from "#db/read/overfull-bookings";
import { isTwice } from "#db/schema/constraint";
import type { Problem } from "#lib/domain/problem";

/** A write that the farm's records cannot take. It ends the change it was part of; `write` hands its problems to the caller. */
export class Refusal extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(({ place, message }) => `${place}: ${message}`).join("\n"));
    this.problems = problems;
  }
}

export function refuse(place: string, message: string): never {
  throw new Refusal([{ place, message }]);
}

/** Runs a write, and says in plain words when another row has the same name already. */
export function refuseTwice<T>(place: string, message: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (isTwice(error)) refuse(place, message);
    throw error;
  }
}

/** Ends a change, by a booking or by a recipe, that leaves a booking with more stems than a plan can reckon with. */
export function refuseOverfull(database: FarmDatabase): void {
  const overfull = overfullBookings(database.$client);
  if (overfull.length) throw new Refusal(overfull.map((message) => ({ place: "", message })));
}

/** Gathers the refusals of many rows, so that all of them are told at once. */
export class Refusals {
  readonly #problems: Problem[] = [];

  /** Runs one row's write; `root` names the row ("beds[3]"). Gives undefined when it was refused. */
  gather<T>(root: string, work: () => T): T | undefined {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      this.#problems.push(...error.problems.map(({ place, message }) => ({ place: `${root}.${place}`, message })));
      return undefined;
    }
  }

  /** The same for each of some rows, named by place ("beds[3]"). Gives what the rows gave that were not refused. */
  each<Row, T>(name: string, rows: readonly Row[] | undefined, work: (row: Row) => T): T[] {
    return (rows ?? []).flatMap((row, place) => this.gather(`${name}[${place}]`, () => work(row)) ?? []);
  }

  /** Ends the change if any row was refused. */
  end(): void {
    if (this.#problems.length) throw new Refusal(this.#problems);
  }
}
