"use client";

import type { FormEvent } from "react";
import { COLOURS, ROLES } from "#lib/domain/words";
import type { OwnColour } from "#lib/domain/writing";
import { coloursIn } from "../ui/typed-colours";
import type { EnquiryForm } from "./asked-enquiry";

type Props = {
  form: EnquiryForm;
  ownColours: readonly OwnColour[];
  /** What is wrong, by the name of the field. */
  problemOf: (name: keyof EnquiryForm) => string | undefined;
  set: (part: Partial<EnquiryForm>) => void;
};

/** The question as a sentence to fill in. Without scripts it is sent as it stands, and the page answers. */
export function Question({ form, ownColours, problemOf, set }: Props) {
  const field = (name: keyof EnquiryForm) => ({
    id: name,
    name,
    value: form[name],
    autoComplete: "off",
    "aria-invalid": problemOf(name) ? true : undefined,
    "aria-describedby": "question-problem",
    onChange: ({ target }: { target: { value: string } }) => set({ [name]: target.value }),
  });
  return (
    <form
      className="ask"
      method="get"
      action="/enquiry"
      aria-label="What the caller asks"
      onSubmit={(event: FormEvent) => event.preventDefault()}
    >
      <label htmlFor="stemCount">Can you do</label>{" "}
      {/* biome-ignore lint/a11y/noAutofocus: the page is opened with the caller on the line, to type the count at once */}
      <input {...field("stemCount")} className="ask-count" inputMode="numeric" placeholder="100" autoFocus />{" "}
      <span className="ask-colours">
        {coloursIn(form.colours, ownColours).map((colour) => (
          <span key={colour} className={`swatch f-${colour}`} aria-hidden="true" />
        ))}
        <input
          {...field("colours")}
          className="ask-hues"
          aria-label="Colours"
          list="colour-words"
          placeholder="any colour"
        />
      </span>{" "}
      <select {...field("role")} aria-label="Role">
        {ROLES.map((role) => (
          <option key={role}>{role}</option>
        ))}
      </select>{" "}
      stems{" "}
      <span className="unbroken">
        <label htmlFor="eventOn">on</label> <input {...field("eventOn")} className="ask-day" type="date" />?
      </span>
      <datalist id="colour-words">
        {COLOURS.map((colour) => (
          <option key={colour} value={colour} />
        ))}
      </datalist>
      <noscript>
        <button type="submit" className="main">
          Answer
        </button>
      </noscript>
    </form>
  );
}
