import type { ReactNode } from "react";
import type { Change, WhatIf } from "#lib/domain/what-if";
import { Form } from "../../ui/form.client";
import { addChange } from "./change-actions";

type Props = { whatIf: WhatIf; kind: Change["kind"]; title: string; submit: string; children: ReactNode };

/** A short form for one kind of change. */
export const AddForm = ({ whatIf, kind, title, submit, children }: Props) => (
  <div className="card supposing">
    <h3>{title}</h3>
    <Form action={addChange} submit={submit} hidden={{ whatIfId: whatIf.id, kind }} label={title} isQuiet>
      <div className="fields">{children}</div>
    </Form>
  </div>
);
