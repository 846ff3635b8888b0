import type { KeepBoard } from "#lib/plan/what-if/keep-board";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import type { Answered } from "./use-answer.client";

type Props = { board: Answered<KeepBoard>; keptCount: number; openCount: number };

/** What the ticks come to, in one line that stays in sight while ticking. */
export function KeepStrip({ board: { answer, isStale }, keptCount, openCount }: Props) {
  const [dug, , tried] = answer.comparison.totals;
  return (
    <p className="keep-strip no-print" data-stale={isStale}>
      <span>
        <strong>{keptCount}</strong> of {countOf(openCount, "bed")} kept
      </span>
      <span>
        <strong className={tried.focalShortStems > 0 ? "short-word" : "good-word"}>
          {inWholes(tried.focalShortStems)}
        </strong>{" "}
        focal short <span className="soft">({inWholes(dug.focalShortStems)} all dug)</span>
      </span>
      <span>
        <strong>{inRoundMoney(tried.buyInCents)}</strong> to buy in
      </span>
      <span>
        <strong>{inRoundMoney(answer.winters[2].weighedCents)}</strong> weighed in all
      </span>
    </p>
  );
}
