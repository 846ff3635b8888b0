"use client";

import { useState } from "react";
import { copied } from "./copied.client";

type Props = {
  text: string;
  label: string;
  /** What it copies, for readers, where several stand on a page. */
  what?: string;
};

/** Puts a text where it can be pasted from, and says so, or that the browser does not let it. What is said is of the text as it stands. */
export function CopyButton({ text, label, what }: Props) {
  const [tried, setTried] = useState<{ text: string; isCopied: boolean } | null>(null);
  const tell = (isCopied: boolean) => setTried({ text, isCopied });
  const said = tried?.text === text ? tried : null;
  return (
    <>
      <button type="button" onClick={() => copied(text).then(tell)}>
        {label}
        {what && <span className="visually-hidden"> {what}</span>}
      </button>
      <span role="status" className="small">
        {said && (said.isCopied ? "✓ Copied" : "This browser does not let it be copied.")}
      </span>
    </>
  );
}
