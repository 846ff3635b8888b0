"use client";

import { useSyncExternalStore } from "react";

const KEPT_AS = "sprayed since";

/** What somebody has said on this phone of a list that stood as the farm did at `asOf`. */
type Kept = { readonly asOf: string; readonly bedIds: readonly number[] };

let kept: Kept | null | undefined;
const listeners = new Set<() => void>();

/** Which beds were sprayed since a list was made, as somebody has said on this phone; null as long as nobody has. A newer list is asked about anew. */
export function useSprayAnswer(
  asOf: string,
): [answer: readonly number[] | null, tell: (bedIds: readonly number[]) => void] {
  const said = useSyncExternalStore(onAnswer, answerNow, () => null);
  return [said?.asOf === asOf ? said.bedIds : null, (bedIds) => tell({ asOf, bedIds })];
}

function answerNow(): Kept | null {
  kept ??= keptAnswer();
  return kept;
}

function onAnswer(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function tell(answer: Kept): void {
  kept = answer;
  try {
    window.localStorage.setItem(KEPT_AS, JSON.stringify(answer));
  } catch {
    // Then it is asked again when the page is opened anew.
  }
  for (const listener of listeners) listener();
}

function keptAnswer(): Kept | null {
  try {
    const read = JSON.parse(window.localStorage.getItem(KEPT_AS) ?? "null");
    return typeof read?.asOf === "string" && Array.isArray(read.bedIds) ? read : null;
  } catch {
    return null;
  }
}
