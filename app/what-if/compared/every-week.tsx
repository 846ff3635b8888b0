import { inShort } from "#lib/domain/day";
import type { ComparedWeek } from "#lib/plan/what-if/comparison";
import { inWholes } from "#lib/plan/words/numbers";
import { Table } from "../../ui/table";
import { SHORT } from "./difference-words";
import { type ComparedPlan, planColumns } from "./plan-columns";

/** The stems short of every week, those that do not change too; folded until asked for. */
export function EveryWeek({ plans, weeks }: { plans: readonly ComparedPlan[]; weeks: readonly ComparedWeek[] }) {
  const asked = weeks.filter(({ all }) => all.some(({ needStems }) => needStems > 0));
  if (asked.length === 0) return null;
  return (
    <details className="fold">
      <summary>Every week, changed or not</summary>
      <Table
        caption="Stems short week by week, every job"
        isCaptionHidden
        columns={[
          {
            head: "Week of",
            kind: "name",
            cell: ({ week, monday }) => <a href={`/weeks/${week}`}>{inShort(monday)}</a>,
          },
          ...planColumns<ComparedWeek>(
            plans,
            ({ all }, index) => (all[index].shortStems > 0 ? inWholes(all[index].shortStems) : "·"),
            ({ all }, index) => ({ difference: all[index].shortStems - all[0].shortStems, sense: SHORT }),
          ),
        ]}
        rows={asked}
        keyOf={({ week }) => week}
        isNarrow
      />
    </details>
  );
}
