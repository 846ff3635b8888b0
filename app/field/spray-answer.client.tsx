"use client";

import { useSyncExternalStore } from "react";
import type { SprayAnswer } from "#lib/domain/list-age";

const KEPT_AS = "sprayed since";

let kept: SprayAnswer | null | undefined;
const listeners = new Set<() => void>();

/** What was said last on this phone of beds that were sprayed; null as long as nobody has said anything. */
export const useSprayAnswer = (): SprayAnswer | null => useSyncExternalStore(onAnswer, answerNow, () => null);

function answerNow(): SprayAnswer | null {
  kept ??= keptAnswer();
  return kept;
}

function onAnswer(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Keeps what somebody says, in the place of what was said before. */
export function tellSprayed(answer: SprayAnswer): void {
  kept = answer;
  try {
    window.localStorage.setItem(KEPT_AS, JSON.stringify(answer));
  } catch {
    // Then it is asked again when the page is opened anew.
  }
  for (const listener of listeners) listener();
}

function keptAnswer(): SprayAnswer | null {
  try {
    const read = JSON.parse(window.localStorage.getItem(KEPT_AS) ?? "null");
    return [read?.asOf, read?.on].every((part) => typeof part === "string") && Array.isArray(read.bedIds) ? read : null;
  } catch {
    return null;
  }
}
