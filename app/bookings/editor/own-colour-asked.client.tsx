"use client";

import { useEffect, useId, useState, useTransition } from "react";
import { COLOURS } from "#lib/domain/words";
import { FRESH } from "../../ui/form-state";
import { rememberColour } from "./own-colour-action";

/** Typing settles before a word is asked about: half a word is no name. */
const SETTLE_MS = 900;

/** Asks which of our colours a word is that nobody knows, and has the farm remember it. */
export function OwnColourAsked({ words }: { words: readonly string[] }) {
  const id = useId();
  const [asked, setAsked] = useState<string | null>(null);
  const [problem, setProblem] = useState("");
  const [isSaving, startSaving] = useTransition();
  const [word] = words;
  useEffect(() => {
    const timer = setTimeout(() => setAsked(word ?? null), word === undefined ? 0 : SETTLE_MS);
    return () => clearTimeout(timer);
  }, [word]);
  if (asked === null || asked !== word) return null;
  const remember = (colour: string) =>
    startSaving(async () => {
      const form = new FormData();
      form.set("name", asked);
      form.set("colour", colour);
      const { problems } = await rememberColour(FRESH, form);
      setProblem(problems.map(({ message }) => message).join("; "));
    });
  return (
    <p className="own-colour">
      <label htmlFor={id}>Which of our colours is “{asked}”?</label>{" "}
      <select id={id} value="" disabled={isSaving} onChange={({ target }) => remember(target.value)}>
        <option value="" disabled>
          choose once, remembered
        </option>
        {COLOURS.map((colour) => (
          <option key={colour}>{colour}</option>
        ))}
      </select>
      {problem && <span className="problem">{problem}</span>}
    </p>
  );
}
