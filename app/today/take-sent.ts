import type { z } from "zod";
import type { FarmDatabase } from "#db/client";
import { SaveRefused, saving, tallyKey } from "#db/journal/saving";
import { bookedDays } from "#db/read/booked-days";
import { correctSeen, takeBackCount, takeBackSeen } from "#db/write/seen-rows";
import type { Written } from "#db/write/write";
import type { Problem } from "#lib/domain/problem";
import type { sentTallySchema, Tally } from "#lib/domain/tally";
import { fingerprintOf } from "../action";
import { asking, notTheOwner } from "../people/who";
import { sharedAnew } from "./correct-row";
import { takeTally } from "./take-tally";

type Sent = z.infer<typeof sentTallySchema>;
type Count = Tally & { readonly key: string };

/**
 * Takes what a phone sent, once however often and in whichever order it comes, in the name of whoever sends it. Gives what stands in its way; nothing when
 * the farm has it.
 */
export function takeSent(database: FarmDatabase, { kind, of, ...said }: Sent): readonly Problem[] {
  if (kind === "counted") return problemsIn(() => counted(database, said));
  if (kind === "taken back" && of) return takeCountBack(database, said, of);
  const share = sharedAnew({ bookings: bookedDays(database) }, said);
  return problemsIn(() =>
    once(database, { ...said, kind }, said.key, () =>
      kind === "corrected"
        ? correctSeen(database, said, said.stemsCut, share, notTheOwner())
        : takeBackSeen(database, said, share, notTheOwner()),
    ),
  );
}

/**
 * A count that is taken back is taken before: so it is in once, and out again, whichever of both comes first and however late. One that the farm cannot
 * take is as good as taken back.
 */
function takeCountBack(database: FarmDatabase, said: Count, of: Count): readonly Problem[] {
  let tallyId: number | undefined;
  const inTheWay = problemsIn(() => {
    const taken = counted(database, of);
    if (taken.ok) ({ tallyId } = taken.result);
    return taken;
  });
  if (inTheWay.length > 0) return [];
  const id = tallyId;
  if (id === undefined) return [{ place: "", message: TOO_OLD }];
  const share = sharedAnew({ bookings: bookedDays(database) }, said);
  return problemsIn(() =>
    once(database, { ...said, of: of.key }, said.key, () => takeBackCount(database, id, share, notTheOwner())),
  );
}

const TOO_OLD = "this count was taken by an earlier version of the tool: take its row back on the list";

const counted = (database: FarmDatabase, { key, ...tally }: Count) =>
  once(database, tally, key, () => takeTally(database, tally, { bookings: bookedDays(database) }));

const once = <T>(database: FarmDatabase, content: unknown, key: string, work: () => Written<T>): Written<T> => {
  const by = asking()?.person?.name ?? null;
  return saving(database, { key: tallyKey(key), fingerprint: fingerprintOf(content), seenRevision: null, by }, work);
};

function problemsIn(work: () => Written<unknown>): readonly Problem[] {
  try {
    const written = work();
    return written.ok ? [] : written.problems;
  } catch (error) {
    if (error instanceof SaveRefused) return error.problems;
    throw error;
  }
}
