"use client";

import { type Unsent, unsentIn } from "#lib/domain/unsent";

const KEY_START = "tally: ";

/** What the browser's storage did not take, and so is kept as long as the page is open. */
const inThisPage = new Map<string, Unsent>();
const listeners = new Set<() => void>();
let all: readonly Unsent[] | null = null;

const NONE: readonly Unsent[] = [];

/** All tallies on this phone. Each lies in the storage by itself, so that two pages open at once never write over one another's. */
export function allUnsent(): readonly Unsent[] {
  all ??= [...stored().filter(({ tally }) => !inThisPage.has(tally.key)), ...inThisPage.values()];
  return all;
}

/** On the server nobody has counted anything. */
export const noneUnsent = (): readonly Unsent[] => NONE;

/** Keeps a tally as it stands now. Where the storage takes nothing it is kept in the page. */
export function keepUnsent(unsent: Unsent): void {
  const { key } = unsent.tally;
  try {
    window.localStorage.setItem(KEY_START + key, JSON.stringify(unsent));
    inThisPage.delete(key);
  } catch {
    inThisPage.set(key, unsent);
  }
  tell();
}

export function dropUnsent(key: string): void {
  inThisPage.delete(key);
  try {
    window.localStorage.removeItem(KEY_START + key);
  } catch {
    // Nothing was kept there.
  }
  tell();
}

/** Whether a tally is lost when this page is closed. */
export const isOnlyInThisPage = (key: string): boolean => inThisPage.has(key);

/** Tells `listener` whenever something was kept or dropped, here or in another page of this browser. Gives what ends it. */
export function onUnsent(listener: () => void): () => void {
  if (listeners.size === 0) window.addEventListener("storage", tell);
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
    if (listeners.size === 0) window.removeEventListener("storage", tell);
  };
}

function tell(): void {
  all = null;
  for (const listener of listeners) listener();
}

function stored(): Unsent[] {
  try {
    const { localStorage } = window;
    const keys = Array.from({ length: localStorage.length }, (_, index) => localStorage.key(index) ?? "");
    return keys.flatMap((key) => (key.startsWith(KEY_START) ? (unsentIn(localStorage.getItem(key)) ?? []) : []));
  } catch {
    return [];
  }
}
