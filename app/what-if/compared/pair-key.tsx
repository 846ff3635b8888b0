import { countOf, inWholes } from "#lib/plan/words/numbers";

/** What a mark of the pairs stands for. */
export const PairKey = ({ unit }: { unit: number }) => (
  <p className="small">
    Only the weeks that change are drawn. One bloom is {countOf(unit, "stem")} of any job, one ring {inWholes(unit)}{" "}
    short; an inked edge comes from a kept bed.
  </p>
);
