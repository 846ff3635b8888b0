import type { Day } from "#lib/domain/day";
import type { Units } from "#lib/domain/words";
import type { KeepBoard } from "#lib/plan/what-if/keep-board";
import { countOf } from "#lib/plan/words/numbers";
import { ComparedTotals } from "../../what-if/compared/compared-totals";
import { ComparedWeeks } from "../../what-if/compared/compared-weeks";
import type { AtHand } from "../planner-data";
import type { Answered } from "./use-answer.client";
import { WinterTakes } from "./winter-takes";

type Props = { board: Answered<KeepBoard>; keptCount: number; units: Units; atHand: AtHand; thisMonday: Day };

const DUG = { id: -1, name: "Every bed dug" };
const STANDS = { id: 0, name: "As the farm stands" };

/** The season before and after: the weeks that are short, the figures, what the winter takes. */
export function BoardFigures({ board: { answer, isStale }, keptCount, units, atHand, thisMonday }: Props) {
  const { comparison, winters } = answer;
  const kept = keptCount === 0 ? "no bed kept" : `${countOf(keptCount, "bed")} kept`;
  const tried = { id: 1, name: `As ticked: ${kept}` };
  const columns = [DUG, STANDS, tried];
  return (
    <details className="season-then" data-stale={isStale}>
      <summary>
        <h2>The season then, week by week</h2>
      </summary>
      <ComparedWeeks plans={columns} weeks={comparison.weeks} thisMonday={thisMonday} />
      <ComparedTotals plans={columns} comparison={{ ...comparison, bookings: [] }} />
      <WinterTakes winters={winters} keptCount={keptCount} columns={columns} units={units} atHand={atHand} />
    </details>
  );
}
