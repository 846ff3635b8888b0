import { cookies } from "next/headers";
import { type JournalChange, latestChanges, standingChange } from "#db/journal/journal";
import { farmDatabase, whileHeld } from "../load";
import { asking, roleNow } from "../people/who";

const SAVED_COOKIE = "saved";

/** How long the last change is shown to who made it; its undo stays in the history. */
const SHOWN_SECONDS = 300;

/** Remembers on this device that the change made last is its own. Called in the turn that made it, before anybody else can make one. */
export async function rememberOwnSave(): Promise<void> {
  const [change] = latestChanges(farmDatabase(), 1);
  // A save that had landed before wrote nothing now: the last change may be somebody else's.
  if (!change || !isOwn(change)) return;
  const life = { sameSite: "strict", httpOnly: true, path: "/", maxAge: SHOWN_SECONDS } as const;
  (await cookies()).set(SAVED_COOKIE, String(change.id), life);
}

/** The change that this device made last, when that was a short while ago and it was not taken back since; null otherwise. */
export async function ownSave(): Promise<JournalChange | null> {
  const own = Number((await cookies()).get(SAVED_COOKIE)?.value);
  const change = Number.isSafeInteger(own) ? whileHeld(() => standingChange(farmDatabase(), own), null) : null;
  return change && isOwn(change) ? change : null;
}

/** The owner sees all; anybody else's cookie shows no change but their own. */
const isOwn = ({ madeBy }: JournalChange): boolean =>
  roleNow() === "owner" || madeBy === (asking()?.person?.name ?? null);
