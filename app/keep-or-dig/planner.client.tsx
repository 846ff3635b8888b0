"use client";

import { useCallback, useMemo, useState } from "react";
import type { OrdersBeside } from "#lib/plan/what-if/orders-beside";
import { ordersBesideInWords } from "#lib/plan/words/order-words";
import { choiceTitle } from "#lib/plan/words/worth-words";
import type { BedWorth } from "../threads/jobs";
import { AdoptBeds } from "./board/adopt-beds.client";
import { BedTable } from "./board/bed-table.client";
import { BoardFigures } from "./board/board-figures";
import { CostParts } from "./board/cost-parts";
import { NetCost } from "./board/net-cost";
import { useAnswer } from "./board/use-answer.client";
import type { PlannerData } from "./planner-data";
import { FindBeds } from "./questions/find-beds.client";
import { HowSure } from "./questions/how-sure.client";
import { KeepCurve } from "./questions/keep-curve.client";
import { KeptSweeps } from "./questions/kept-sweeps.client";
import type { BoardInWords } from "./tried-plan";

/** Questions that follow so soon are asked as one: ticks are answered at once, the worth of beds takes longer to work out. */
const TRY_SETTLE_MS = 0;
const WORTH_SETTLE_MS = 250;

/** The beds with their ticks, and everything that hangs on them. Nothing is written before the beds are adopted. */
export function Planner({ data }: { data: PlannerData }) {
  const { seasonYear, revision, rows, units, atHand, keptNowIds, blooms, isOver } = data;
  const [keptBedIds, setKeptBedIds] = useState(data.board.keptBedIds);
  const question = JSON.stringify({ seasonYear, keptBedIds, revision });
  const board = useAnswer<BoardInWords>("/keep-or-dig/try", question, data.board, TRY_SETTLE_MS);
  const worths = useAnswer<readonly BedWorth[] | null>("/keep-or-dig/worths", question, null, WORTH_SETTLE_MS);
  const orders = useAnswer<OrdersBeside | null>("/keep-or-dig/orders", question, null, WORTH_SETTLE_MS);
  const shortMondays = useMemo(() => shortWithAllDug(data.board), [data.board]);
  const choose = (ids: readonly number[]) => setKeptBedIds(inOrder(rows, new Set(ids)));
  const turn = useCallback((id: number) => setKeptBedIds((kept) => inOrder(rows, turned(kept, id))), [rows]);
  return (
    <>
      <header className="keep-head">
        <h1>{choiceTitle(keptBedIds.length, rows.filter(isOpen).length)}</h1>
        <p className="keep-answer lead" role="status" data-stale={board.isStale}>
          {board.answer.words}
        </p>
      </header>
      {board.problem && (
        <p className="notice bad" role="alert">
          {board.problem}
        </p>
      )}
      <FindBeds seasonYear={seasonYear} rows={rows} units={units} keptBedIds={keptBedIds} choose={choose}>
        <button type="button" onClick={() => choose(keptNowIds)}>
          As the farm stands
        </button>
        <button type="button" onClick={() => choose([])}>
          Dig all
        </button>
        <button type="button" onClick={() => choose(rows.filter(isOpen).map(({ id }) => id))}>
          Keep all that may be
        </button>
      </FindBeds>
      <div className="keep-columns">
        <section aria-labelledby="beds">
          <h2 id="beds" className="visually-hidden">
            The beds
          </h2>
          <BedTable
            rows={rows}
            units={units}
            blooms={blooms}
            shortMondays={shortMondays}
            keptBedIds={keptBedIds}
            worths={worths}
            turn={turn}
          />
          <CostParts rows={rows} worths={worths} />
        </section>
        <div className="keep-side">
          <NetCost board={board} canAdopt={!isOver && String(keptBedIds) !== String(keptNowIds)} />
          {orders.answer && (
            <p className="small orders-beside" data-stale={orders.isStale}>
              {ordersBesideInWords(orders.answer)}
            </p>
          )}
          {isOver ? (
            <p className="notice">The winter before {seasonYear} is over: nothing of it can be adopted any more.</p>
          ) : (
            <AdoptBeds rows={rows} seasonYear={seasonYear} keptBedIds={keptBedIds} />
          )}
        </div>
      </div>
      <BoardFigures
        board={board}
        keptCount={keptBedIds.length}
        units={units}
        atHand={atHand}
        thisMonday={data.thisMonday}
      />
      <div className="keep-questions">
        <HowSure key={question} question={{ seasonYear, keptBedIds }} sampled={data.sampled} />
        <KeepCurve seasonYear={seasonYear} />
        <KeptSweeps seasonYear={seasonYear} rows={rows} />
      </div>
    </>
  );
}

const inOrder = (rows: PlannerData["rows"], ids: ReadonlySet<number>): number[] =>
  rows.flatMap(({ id }) => (ids.has(id) ? [id] : []));

const turned = (kept: readonly number[], id: number): ReadonlySet<number> =>
  new Set(kept.includes(id) ? kept.filter((other) => other !== id) : [...kept, id]);

const isOpen = ({ forbidden }: { forbidden: readonly string[] }): boolean => forbidden.length === 0;

/** The Mondays of the weeks that are short of focal stems when every bed is dug. */
const shortWithAllDug = ({ comparison }: BoardInWords): ReadonlySet<string> =>
  new Set(comparison.weeks.flatMap(({ monday, focal }) => (focal[0].shortStems > 0 ? [monday] : [])));
