"use client";

import { type RefObject, useEffect, useState } from "react";

/** The fields of a form by name, as they were typed; what the page itself writes into it begins with "$" or is hidden. */
export type Typed = Readonly<Record<string, readonly string[]>>;

const KEY_START = "typed: ";

/** What a filled form holds that a person typed. `hidden` names the fields that the page wrote. */
export function typedIn(form: HTMLFormElement, hidden: readonly string[]): Typed {
  const typed: Record<string, string[]> = {};
  for (const [name, value] of new FormData(form))
    if (typeof value === "string" && !name.startsWith("$") && !hidden.includes(name))
      typed[name] = [...(typed[name] ?? []), value];
  return typed;
}

/** Keeps what was typed in this browser until it was saved, through a failed save, a reload or a crash. */
export function keepTyping(place: string, typed: Typed): void {
  inStorage((storage) => storage.setItem(KEY_START + place, JSON.stringify(typed)));
}

export const forgetTyping = (place: string): void => {
  inStorage((storage) => storage.removeItem(KEY_START + place));
};

/** What was typed into a place before and never saved; null when there is none. */
export function typedBefore(place: string): Typed | null {
  const typed = inStorage((storage) => JSON.parse(storage.getItem(KEY_START + place) ?? "null"));
  return isTyped(typed) ? typed : null;
}

type Props = {
  form: RefObject<HTMLFormElement | null>;
  place: string;
  hidden: readonly string[];
  /** Where the caller keeps the fields, and not the page. */
  onRefill?: (typed: Typed) => void;
};

/** Offers what was typed into this form before and never saved. Nothing when there is none. */
export function KeptTyping({ form, place, hidden, onRefill }: Props) {
  const [kept, setKept] = useState<Typed | null>(null);
  const hiddenNames = hidden.join();
  useEffect(() => {
    const typed = typedBefore(place);
    if (!form.current || typed === null) return;
    if (JSON.stringify(typed) === JSON.stringify(typedIn(form.current, hiddenNames.split(",")))) return;
    setKept(typed);
    // Of no use where it cannot be seen.
    form.current.closest("details")?.setAttribute("open", "");
  }, [form, place, hiddenNames]);
  if (kept === null) return null;
  const end = (isWanted: boolean) => () => {
    if (isWanted && onRefill) onRefill(kept);
    else if (isWanted && form.current) refill(form.current, kept);
    if (!isWanted) forgetTyping(place);
    setKept(null);
  };
  return (
    <div className="notice" role="status">
      <p>What you typed here before was not saved. This browser has kept it.</p>
      <p className="actions">
        <button type="button" onClick={end(true)}>
          Fill it in again
        </button>
        <button type="button" className="quiet" onClick={end(false)}>
          Throw it away
        </button>
      </p>
    </div>
  );
}

function refill(form: HTMLFormElement, typed: Typed): void {
  const places: Record<string, number> = {};
  for (const control of form.elements) {
    if (control instanceof HTMLInputElement && (control.type === "checkbox" || control.type === "radio"))
      control.checked = typed[control.name]?.includes(control.value) ?? false;
    else if (isTextual(control) && control.name in typed) {
      const place = places[control.name] ?? 0;
      places[control.name] = place + 1;
      control.value = typed[control.name][place] ?? "";
    }
  }
}

const isTextual = (control: Element): control is HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement =>
  (control instanceof HTMLInputElement && !["hidden", "file", "submit"].includes(control.type)) ||
  control instanceof HTMLTextAreaElement ||
  control instanceof HTMLSelectElement;

const isTyped = (typed: unknown): typed is Typed =>
  typeof typed === "object" &&
  typed !== null &&
  Object.values(typed).every((values) => Array.isArray(values) && values.every((value) => typeof value === "string"));

/** A browser may forbid its storage or have no room in it; then nothing is kept, and nothing else is wrong. */
function inStorage<T>(use: (storage: Storage) => T): T | null {
  try {
    return use(window.localStorage);
  } catch {
    return null;
  }
}
