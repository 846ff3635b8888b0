import type fc from "fast-check";
import type { FarmDatabase } from "#db/client";
import type { Written } from "#db/write/write";
import type { Snapshot } from "#lib/domain/snapshot";

/** One write of any kind, on whatever the farm holds when its turn comes. */
export type Step = { readonly word: string; run(database: FarmDatabase, now: Snapshot): Written<unknown> };

/** A step from what it is given and how that is written. */
export const step = <Given>(word: string, given: fc.Arbitrary<Given>, run: Run<Given>): fc.Arbitrary<Step> =>
  given.map((drawn) => ({ word, run: (database, now) => run(database, now, drawn) }));
type Run<Given> = (database: FarmDatabase, now: Snapshot, given: Given) => Written<unknown>;
