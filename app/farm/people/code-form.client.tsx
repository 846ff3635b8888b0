"use client";

import { useActionState } from "react";
import type { CodeState } from "./code-state";
import { invite } from "./people-actions";
import { ShownCode } from "./shown-code";

/** Makes the code for one person's phone and shows it until the page is left. */
export function CodeForm({ personId, name, words }: { personId: number; name: string; words: string }) {
  const [code, make, isPending] = useActionState<CodeState, FormData>(invite, null);
  return (
    <form action={make} className="kit">
      <input type="hidden" name="personId" value={personId} />
      <button type="submit" disabled={isPending} aria-label={`${words}: ${name}`}>
        {words}
      </button>
      <ShownCode code={code} label={`Code for ${name}’s phone`}>
        {name} scans this with the phone’s camera, or opens the address. It is good for one phone and a quarter of an
        hour.
      </ShownCode>
    </form>
  );
}
