"use client";

import { useState } from "react";
import type { BedWorth } from "../threads/jobs";
import { AdoptBeds } from "./board/adopt-beds.client";
import { BedTable } from "./board/bed-table.client";
import { BoardFigures } from "./board/board-figures";
import { CostParts } from "./board/cost-parts";
import { KeepStrip } from "./board/keep-strip";
import { useAnswer } from "./board/use-answer.client";
import type { PlannerData } from "./planner-data";
import { FindBeds } from "./questions/find-beds.client";
import { HowSure } from "./questions/how-sure.client";
import { KeepCurve } from "./questions/keep-curve.client";
import { SurvivalSweep } from "./questions/survival-sweep.client";
import type { BoardInWords } from "./tried-plan";

/** Questions that follow so soon are asked as one: ticks are answered at once, the worth of beds takes longer to work out. */
const TRY_SETTLE_MS = 0;
const WORTH_SETTLE_MS = 250;

/** The beds with their ticks, and everything that hangs on them. Nothing is written before the beds are adopted. */
export function Planner({ data }: { data: PlannerData }) {
  const { seasonYear, revision, rows, units, atHand, keptNowIds } = data;
  const [keptBedIds, setKeptBedIds] = useState(data.board.keptBedIds);
  const question = JSON.stringify({ seasonYear, keptBedIds, revision });
  const board = useAnswer<BoardInWords>("/keep-or-dig/try", question, data.board, TRY_SETTLE_MS);
  const worths = useAnswer<readonly BedWorth[] | null>("/keep-or-dig/worths", question, null, WORTH_SETTLE_MS);
  const inOrder = (ids: ReadonlySet<number>) => rows.flatMap(({ id }) => (ids.has(id) ? [id] : []));
  const choose = (ids: readonly number[]) => setKeptBedIds(inOrder(new Set(ids)));
  const turn = (id: number) =>
    choose(keptBedIds.includes(id) ? keptBedIds.filter((kept) => kept !== id) : [...keptBedIds, id]);
  return (
    <>
      <p className="keep-answer" role="status" data-stale={board.isStale}>
        {board.answer.words}
      </p>
      {board.problem && (
        <p className="notice bad" role="alert">
          {board.problem}
        </p>
      )}
      <FindBeds seasonYear={seasonYear} rows={rows} units={units} keptBedIds={keptBedIds} choose={choose} />
      <section aria-labelledby="beds">
        <h2 id="beds">The beds</h2>
        <BedTable
          rows={rows}
          units={units}
          keptBedIds={keptBedIds}
          keptNowIds={keptNowIds}
          worths={worths}
          turn={turn}
          choose={choose}
        />
        <CostParts rows={rows} />
        <KeepStrip board={board} keptCount={keptBedIds.length} openCount={rows.filter(isOpen).length} />
      </section>
      <BoardFigures board={board} keptCount={keptBedIds.length} units={units} atHand={atHand} />
      <AdoptBeds rows={rows} seasonYear={seasonYear} keptBedIds={keptBedIds} />
      <HowSure key={question} question={{ seasonYear, keptBedIds }} />
      <KeepCurve seasonYear={seasonYear} />
      <SurvivalSweep seasonYear={seasonYear} rows={rows} />
    </>
  );
}

const isOpen = ({ forbidden }: { forbidden: readonly string[] }): boolean => forbidden.length === 0;
