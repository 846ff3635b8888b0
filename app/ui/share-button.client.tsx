"use client";

import { useState } from "react";
import { copied } from "./copied.client";

type Props = {
  readonly title: string;
  readonly text: string;
  readonly label: string;
  /** What it hands on, for readers, where several stand on a page. */
  readonly what?: string;
  readonly className?: string;
};

/**
 * Hands a text on by the phone's own share sheet; where the browser has none, over a line without a certificate or on a desk, it is copied. The text alone
 * goes, and no address.
 */
export function ShareButton({ title, text, label, what, className }: Props) {
  const [said, setSaid] = useState("");
  const handOn = async () => {
    if (!navigator.share) return setSaid((await copied(text)) ? "✓ Copied" : "This browser does not let it be copied.");
    // Whoever closes the sheet again has handed on nothing, and knows it.
    await navigator.share({ title, text }).catch(() => {});
  };
  return (
    <>
      <button type="button" className={className} onClick={handOn}>
        {label}
        {what && <span className="visually-hidden"> {what}</span>}
      </button>
      <span role="status" className="small">
        {said}
      </span>
    </>
  );
}
