import { inWholes } from "#lib/plan/words/numbers";

/** What is short, with its ring and its word; or a tick that all is there. */
export const ShortState = ({ stems, all = "all" }: { stems: number; all?: string }) => (
  <span className={`state ${stems > 0 ? "short" : "covered"}`}>
    <svg width="13" height="13" aria-hidden="true">
      <use href={stems > 0 ? "#m-short" : "#m-tick"} />
    </svg>
    {stems > 0 ? `${inWholes(stems)} short` : all}
  </span>
);
