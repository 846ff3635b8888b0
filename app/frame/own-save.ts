import { cookies } from "next/headers";
import { type JournalChange, latestChanges } from "#db/journal/journal";
import { farmDatabase, whileHeld } from "../load";

const SAVED_COOKIE = "saved";

/** How long the last change is shown to who made it; its undo stays in the history. */
const SHOWN_SECONDS = 300;

/** Remembers on this device that the change made last is its own. */
export async function rememberOwnSave(): Promise<void> {
  const [change] = latestChanges(farmDatabase(), 1);
  if (!change) return;
  const life = { sameSite: "strict", httpOnly: true, path: "/", maxAge: SHOWN_SECONDS } as const;
  (await cookies()).set(SAVED_COOKIE, String(change.id), life);
}

/** The change made last, when this device made it a short while ago; null otherwise. */
export async function ownSave(): Promise<JournalChange | null> {
  const own = (await cookies()).get(SAVED_COOKIE)?.value;
  if (own === undefined) return null;
  const [change] = whileHeld(() => latestChanges(farmDatabase(), 1), []);
  return change && String(change.id) === own ? change : null;
}
