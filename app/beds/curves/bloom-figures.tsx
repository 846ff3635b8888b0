import { inShort } from "#lib/domain/day";
import type { PlantingForecast } from "#lib/plan/road/forecast";
import type { Plan } from "#lib/plan/road/plan";
import { replay } from "#lib/plan/road/replay";
import { weeklyStems } from "#lib/plan/road/weekly-stems";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { replayInWords, tooFewYearsInWords } from "#lib/plan/words/replay-words";
import { type Column, Table } from "../../ui/table";
import { BloomBars } from "./bloom-bars";
import { CurveGrounds } from "./curve-grounds";

const COLUMNS: readonly Column<ReturnType<typeof weeklyStems>[number]>[] = [
  { head: "Week from", kind: "name", cell: ({ from }) => inShort(from) },
  { head: "Low", unit: "stems", kind: "number", cell: ({ low }) => inWholes(low) },
  { head: "Likely", unit: "stems", kind: "number", cell: ({ likely }) => inWholes(likely) },
  { head: "High", unit: "stems", kind: "number", cell: ({ high }) => inWholes(high) },
];

/** How a planting blooms: the picture with the poor and the rich season in words, the same numbers as a table, and where they come from. Nothing without a curve. */
export function BloomFigures({ row, plan: { frostDay, snapshot, seasonYear } }: { row: PlantingForecast; plan: Plan }) {
  const { curve, crop, variety } = row;
  if (!curve) return null;
  const weeks = weeklyStems(row, frostDay);
  const open = weeks.filter(({ likely }) => likely > 0);
  const sumOf = (what: "low" | "likely" | "high") => open.reduce((sum, week) => sum + week[what], 0);
  return (
    <div className="bloom-figures">
      <figure>
        <figcaption className="note">Stems that open each week{crop.tender && ", up to the first frost"}</figcaption>
        <BloomBars
          words={`Stems that open each week, ${crop.name} ${variety.name}: ${countOf(sumOf("likely"), "stem")} in ${countOf(open.length, "week")}; the same numbers stand in the table`}
          weeks={open}
          colour={variety.colour}
        />
      </figure>
      <div>
        <p>
          {curve.yieldSpread > 0 && (
            <>
              A poor season opens {inWholes(sumOf("low"))}, a rich one {inWholes(sumOf("high"))}: one in ten gives less,
              one in ten more.{" "}
            </>
          )}
          {replayInWords(row, replay(snapshot, seasonYear)) ??
            `In two seasons of three the first cut is at most ${countOf(curve.firstCutSpreadDays, "day")} early or late.`}{" "}
          {curve.heatBaseC !== null && tooFewYearsInWords(snapshot)}
        </p>
        <p className="soft">{whoseInWords(row)}.</p>
        <CurveGrounds curve={curve} units={snapshot.farm.units} />
        <details>
          <summary>The same numbers as a table</summary>
          <Table
            caption={`Stems that open by week, ${crop.name} ${variety.name}`}
            isCaptionHidden
            columns={COLUMNS}
            rows={weeks}
            keyOf={({ from }) => from}
            isNarrow
          />
        </details>
      </div>
    </div>
  );
}

/** Whose curve it is that a planting blooms by. */
function whoseInWords({ curve, crop, variety }: PlantingForecast): string {
  if (curve?.plantingId) return "A curve of this planting alone";
  return curve?.varietyId ? `A curve of ${variety.name} alone` : `The curve of all ${crop.name.toLowerCase()}`;
}
