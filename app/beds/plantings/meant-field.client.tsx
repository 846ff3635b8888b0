"use client";

import { CheckField } from "../../ui/form-checks.client";
import { useField } from "../../ui/form-context.client";
import { MEANT } from "./meant";

const LABEL = "Save it all the same";

/** The box to save what the tool doubts; there only once it has doubted something. */
export function MeantField() {
  const { problem, typed } = useField(MEANT, LABEL);
  return problem !== undefined || typed?.includes("yes") ? <CheckField name={MEANT} label={LABEL} /> : null;
}
