"use client";

import { answeredTally, goingOut, type TallyAnswer, toSend } from "#lib/domain/unsent";
import { heardOf, tellContact } from "./contact.client";
import { allUnsent, keepUnsent } from "./unsent-store.client";

/** What goes out at once: some 10 kB. */
const MOST_AT_ONCE = 40;
const WAITS_MS = { answer: 20_000, first: 2000, longest: 30_000 };

let underWay: Promise<void> | null = null;
let wait = WAITS_MS.first;
let again: ReturnType<typeof setTimeout> | undefined;

/** Sends what is on this phone, once at a time, and tries again until the farm has it all. */
export function sendUnsent(): Promise<void> {
  underWay ??= sendAll().finally(() => {
    underWay = null;
  });
  return underWay;
}

async function sendAll(): Promise<void> {
  clearTimeout(again);
  // Where the phone itself knows that there is no line, nothing goes out, and all can still be taken back.
  if (!navigator.onLine) return tellContact("lost");
  for (let batch = toSend(allUnsent(), MOST_AT_ONCE); batch.length > 0; batch = toSend(allUnsent(), MOST_AT_ONCE)) {
    for (const unsent of batch) keepUnsent(goingOut(unsent));
    const answer = await answerTo(batch.map(({ tally }) => tally));
    if (answer === null || answer.answers.length === 0) {
      again = setTimeout(sendUnsent, wait);
      wait = Math.min(2 * wait, WAITS_MS.longest);
      return;
    }
    wait = WAITS_MS.first;
    for (const unsent of batch) keepUnsent(answeredTally(goingOut(unsent), answer.answers, answer.revision));
    heardOf(answer.revision);
  }
}

type Answer = { readonly answers: readonly TallyAnswer[]; readonly revision: number };

/** What the farm says; null when it says nothing, or nothing to this phone. */
async function answerTo(tallies: readonly unknown[]): Promise<Answer | null> {
  try {
    const response = await fetch("/today/tallies", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ tallies }),
      signal: AbortSignal.timeout(WAITS_MS.answer),
    });
    if (response.ok) return await response.json();
    tellContact(response.status === 401 || response.status === 403 ? "not let in" : "refused");
    return null;
  } catch {
    tellContact("lost");
    return null;
  }
}
