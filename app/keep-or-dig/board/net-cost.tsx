import type { KeepBoard, WinterSum } from "#lib/plan/what-if/keep-board";
import { countOf, inMoney, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import type { Answered } from "./use-answer.client";

type Props = { board: Answered<KeepBoard>; canAdopt: boolean };

/** What the ticks come to: the one net cost of the winter, beside every bed dug and the farm as it stands, and what stays short. In sight while ticking; on a phone with the way to the button that adopts them. */
export function NetCost({ board: { answer, isStale }, canAdopt }: Props) {
  const [dug, , tried] = answer.comparison.totals;
  const [dugCents, standsCents, triedCents] = answer.winters.map(({ weighedCents }) => weighedCents);
  return (
    <section className="card net-cost" aria-labelledby="net-cost" data-stale={isStale}>
      <h2 id="net-cost">Net cost of the winter</h2>
      {canAdopt && (
        <a className="button main adopt-link" href="#adopt">
          Adopt
        </a>
      )}
      <b className="great">{inRoundMoney(triedCents)}</b>
      <p className="small">
        {against(dugCents - triedCents)} digging every bed; {against(standsCents - triedCents)} as it stands.
      </p>
      <p>
        <strong className={`focal-short ${tried.focalShortStems > 0 ? "short-word" : "good-word"}`}>
          {inWholes(tried.focalShortStems)}
        </strong>{" "}
        focal short <span className="soft">({inWholes(dug.focalShortStems)} all dug)</span>,{" "}
        {inRoundMoney(tried.buyInCents)} to buy in
      </p>
      <details className="net-parts">
        <summary>What it adds up from</summary>
        <dl className="leaders">
          {partsOf(answer.winters[2]).map(([words, cents]) => (
            <div key={words}>
              <dt>{words}</dt>
              <dd>{inMoney(cents)}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}

/** The parts of the net cost; they sum to it. */
const partsOf = ({
  cost,
  weighedCents,
  brokenStems,
  brokenCents,
}: WinterSum): readonly (readonly [string, number])[] => [
  ["Stems short, at price and chance; poorer fits", weighedCents - cost.cents - brokenCents],
  ...(brokenStems > 0
    ? [[`Promises broken, ${countOf(brokenStems, "stem")}`, brokenCents] satisfies readonly [string, number]]
    : []),
  ["Labour", cost.labourCents],
  ["Leaves, tarp, store", cost.materialCents],
  ["Tubers bought, less gained", cost.replacementCents],
  ["Early crop foregone", cost.freeBedCents],
  ["In all", weighedCents],
];

function against(savedCents: number): string {
  if (Math.abs(savedCents) < 50) return "the same as";
  return `${inRoundMoney(Math.abs(savedCents))} ${savedCents > 0 ? "less" : "more"} than`;
}
