import { z } from "zod";
import type { Parsed } from "#lib/domain/problem";
import { ENQUIRY, type Enquiry } from "#lib/domain/records/enquiry";
import { type Manner, readForm } from "#lib/domain/records/form";

/** The question as it stands in its fields, all text. */
export type EnquiryForm = { stemCount: string; colours: string; role: string; eventOn: string };

/** More letters than it takes to name every colour. */
const text = z.string().max(400).catch("");
const formSchema = z.object({ stemCount: text, colours: text, role: text, eventOn: text });

/** What an address or a request says of the question; what it does not say is empty, and the role is focal. */
export function formIn(asked: unknown): EnquiryForm {
  const form = formSchema.safeParse(asked);
  const { role, ...rest } = form.success ? form.data : { stemCount: "", colours: "", role: "", eventOn: "" };
  return { ...rest, role: role || "focal" };
}

/** The question, or every problem with it, each at its field. */
export const readEnquiry = (form: EnquiryForm, manner: Manner): Parsed<Enquiry> =>
  readForm(ENQUIRY, { getAll: (name) => [form[name as keyof EnquiryForm] ?? ""] }, manner);

/** Nothing of a question was typed yet: there is nothing to mend. */
export const isUnasked = ({ stemCount, colours, eventOn }: EnquiryForm): boolean =>
  `${stemCount}${colours}${eventOn}`.trim() === "";

/** The address of a question. */
export const addressOf = (form: EnquiryForm): string =>
  `/enquiry?${new URLSearchParams({ stemCount: form.stemCount, colours: form.colours, role: form.role, eventOn: form.eventOn })}`;
