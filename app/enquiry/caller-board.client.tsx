"use client";

import { useState } from "react";
import type { EnquiryForm } from "./asked-enquiry";
import { HoldForm } from "./hold-form.client";

type Props = { sentence: string; form: EnquiryForm; holdUntil: string };

/** The wooden board: the words to read to the caller, and the form that holds what was asked. */
export const CallerBoard = ({ sentence, form, holdUntil }: Props) => (
  <section className="caller-board" aria-labelledby="say">
    <div className="row apart">
      <h2 id="say">Read to the caller</h2>
      <CopySentence sentence={sentence} />
    </div>
    <blockquote aria-live="polite">“{sentence}”</blockquote>
    <HoldForm key={form.eventOn} form={form} holdUntil={holdUntil} />
  </section>
);

/** Puts the sentence where it can be pasted from, where the browser lets it. */
function CopySentence({ sentence }: { sentence: string }) {
  const [copied, setCopied] = useState("");
  const copy = async () => {
    await navigator.clipboard.writeText(sentence).then(
      () => setCopied(sentence),
      () => setCopied(""),
    );
  };
  return (
    <button type="button" onClick={copy}>
      {copied === sentence ? "✓ Copied" : "Copy it"}
    </button>
  );
}
