import type { Comparison } from "#lib/plan/what-if/comparison";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { Difference, SHORT } from "./difference-words";

/** The answer in two sentences, told again whenever a change moves it. */
export function Outcome({ compared, changeCount }: { compared: Comparison; changeCount: number }) {
  const [now, then] = compared.totals;
  const weekCount = (planIndex: number) => compared.weeks.filter(({ focal }) => focal[planIndex].shortStems > 0).length;
  const inWeeks = (planIndex: number) => `in ${countOf(weekCount(planIndex), "week")}`;
  return (
    <p className="notice" role="status">
      As it stands, <strong>{countOf(now.focalShortStems, "focal stem")}</strong> short{" "}
      {now.focalShortStems > 0 && inWeeks(0)}.{" "}
      {changeCount === 0 ? (
        "Nothing is supposed yet."
      ) : (
        <>
          So supposed, <strong>{inWholes(then.focalShortStems)}</strong> short {then.focalShortStems > 0 && inWeeks(1)}:{" "}
          <Difference difference={then.focalShortStems - now.focalShortStems} sense={SHORT} />.
        </>
      )}
    </p>
  );
}
