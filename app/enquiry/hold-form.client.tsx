"use client";

import { Form } from "../ui/form.client";
import { DayField, TextField } from "../ui/form-fields.client";
import { holdEnquiry } from "./actions";
import type { EnquiryForm } from "./asked-enquiry";

/** Holds what was asked as a booking: for whom and until when, in one line. */
export const HoldForm = ({ form, holdUntil }: { form: EnquiryForm; holdUntil: string }) => (
  <Form action={holdEnquiry} submit="Hold it" label="Hold it" hidden={form}>
    <div className="hold-fields">
      <TextField name="client" label="For whom" />
      <DayField name="heldUntil" label="Hold it until" value={holdUntil < form.eventOn ? holdUntil : form.eventOn} />
    </div>
  </Form>
);
