import { CopyButton } from "../ui/copy-button.client";
import type { EnquiryForm } from "./asked-enquiry";
import { HoldForm } from "./hold-form.client";

type Props = { sentence: string; form: EnquiryForm; holdUntil: string };

/** The wooden board: the words to read to the caller, and the form that holds what was asked. */
export const CallerBoard = ({ sentence, form, holdUntil }: Props) => (
  <section className="caller-board" aria-labelledby="say">
    <div className="row apart">
      <h2 id="say">Read to the caller</h2>
      <p className="row">
        <CopyButton text={sentence} label="Copy it" />
      </p>
    </div>
    <blockquote aria-live="polite">“{sentence}”</blockquote>
    <HoldForm key={form.eventOn} form={form} holdUntil={holdUntil} />
  </section>
);
