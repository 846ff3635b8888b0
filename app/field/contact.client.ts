"use client";

import { momentNow } from "./phone-clock.client";

/** How this page stands to the farm's computer. `refused`: it answers, and cannot take what is sent just now. */
export type ContactState = "unknown" | "open" | "lost" | "not let in" | "refused";

/** `revision`: the farm's last change when it was heard of last, at the moment `at`. */
export type Contact = { readonly state: ContactState; readonly revision: number | null; readonly at: string | null };

const UNKNOWN: Contact = { state: "unknown", revision: null, at: null };
const KEPT_AS = "farm heard of";

let contact: Contact | null = null;
const listeners = new Set<() => void>();

/** What this browser knows of the farm, also from the pages before this one. */
export function contactNow(): Contact {
  contact ??= { ...UNKNOWN, ...keptContact() };
  return contact;
}

export const noContact = (): Contact => UNKNOWN;

export function onContact(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The farm was heard: it stands at this revision. */
export function heardOf(revision: number): void {
  become({ state: "open", revision, at: momentNow() });
  try {
    window.localStorage.setItem(KEPT_AS, JSON.stringify({ revision, at: contactNow().at }));
  } catch {
    // Then the next page does not know when this one heard of the farm.
  }
}

/** The line is not what it was. */
export function tellContact(state: Exclude<ContactState, "open">): void {
  if (contactNow().state !== state) become({ ...contactNow(), state });
}

function become(now: Contact): void {
  contact = now;
  for (const listener of listeners) listener();
}

function keptContact(): Partial<Contact> {
  try {
    const { revision, at } = JSON.parse(window.localStorage.getItem(KEPT_AS) ?? "{}");
    return Number.isSafeInteger(revision) && typeof at === "string" ? { revision, at } : {};
  } catch {
    return {};
  }
}
