"use client";

import { useState } from "react";

/** Puts an order's words where they can be pasted from, and says so. */
export function CopyOrder({ words, what }: { words: string; what: string }) {
  const [state, setState] = useState<"ready" | "copied" | "failed">("ready");
  const copy = () =>
    navigator.clipboard.writeText(words).then(
      () => setState("copied"),
      () => setState("failed"),
    );
  return (
    <>
      <button type="button" onClick={copy}>
        Copy the order<span className="visually-hidden"> {what}</span>
      </button>
      <span role="status" className="small">
        {state === "copied" && "✓ Copied"}
        {state === "failed" && "This browser does not let it be copied."}
      </span>
    </>
  );
}
