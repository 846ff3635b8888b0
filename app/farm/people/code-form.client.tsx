"use client";

import { useActionState } from "react";
import type { CodeState } from "./code-state";
import { invite } from "./people-actions";

/** Makes the code for one person's phone and shows it until the page is left. Dark on light in any theme: many readers take no other. */
export function CodeForm({ personId, name, words }: { personId: number; name: string; words: string }) {
  const [code, make, isPending] = useActionState<CodeState, FormData>(invite, null);
  return (
    <form action={make} className="kit">
      <input type="hidden" name="personId" value={personId} />
      <button type="submit" disabled={isPending} aria-label={`${words}: ${name}`}>
        {words}
      </button>
      {code && (
        <div role="status" className="join-code">
          <svg
            viewBox={`0 0 ${code.drawing.size} ${code.drawing.size}`}
            role="img"
            aria-label={`Code for ${name}’s phone`}
            shapeRendering="crispEdges"
          >
            <rect width={code.drawing.size} height={code.drawing.size} />
            <path d={code.drawing.dark} />
          </svg>
          <p className="note">
            {name} scans this with the phone’s camera, or opens <code>{code.link}</code>. It is good for one phone and a
            quarter of an hour.
          </p>
        </div>
      )}
    </form>
  );
}
