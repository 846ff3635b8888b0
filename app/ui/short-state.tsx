import { inWholes } from "#lib/plan/words/numbers";
import { StateSign } from "./state-sign";

/** What is short, with its ring and its word; or a tick that all is there. */
export const ShortState = ({ stems, all = "all" }: { stems: number; all?: string }) => (
  <span className={`state ${stems > 0 ? "short" : "covered"}`}>
    <StateSign of={stems > 0 ? "short" : "tick"} size={13} />
    {stems > 0 ? `${inWholes(stems)} short` : all}
  </span>
);
