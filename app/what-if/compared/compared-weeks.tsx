import { weekInWords } from "#lib/domain/day";
import type { ComparedWeek } from "#lib/plan/what-if/comparison";
import { inWholes } from "#lib/plan/words/numbers";
import { Bar } from "../../ui/bar";
import { Table } from "../../ui/table";
import { SHORT } from "./difference-words";
import { type ComparedPlan, planColumns } from "./plan-columns";

/** Focal stems short in each week under each plan: a number, a bar, and how far it is from the first. */
export function ComparedWeeks({ plans, weeks }: { plans: readonly ComparedPlan[]; weeks: readonly ComparedWeek[] }) {
  const short = weeks.filter(({ focal }) => focal.some(({ shortStems }) => shortStems > 0));
  if (short.length === 0)
    return (
      <p className="notice good">
        <span className="good-word">No focal stem is short in any week, in any of them.</span>
      </p>
    );
  const most = Math.max(...short.flatMap(({ focal }) => focal.map(({ shortStems }) => shortStems)));
  return (
    <Table
      caption="Focal stems short, week by week"
      columns={[
        {
          head: "Week",
          kind: "name",
          cell: ({ week, monday }) => <a href={`/weeks/${week}`}>{weekInWords(monday)}</a>,
        },
        ...planColumns<ComparedWeek>(
          plans,
          ({ focal }, index) => <ShortOf {...focal[index]} most={most} />,
          ({ focal }, index) => ({ difference: focal[index].shortStems - focal[0].shortStems, sense: SHORT }),
        ),
      ]}
      rows={short}
      keyOf={({ week }) => week}
    />
  );
}

/** Stems short, and as a bar of the most short in any week. */
const ShortOf = ({ shortStems, needStems, most }: { shortStems: number; needStems: number; most: number }) => (
  <>
    {shortStems > 0 ? (
      <strong className="short-word">{inWholes(shortStems)}</strong>
    ) : (
      <span className="good-word">{needStems > 0 ? "0" : "0, none asked"}</span>
    )}{" "}
    <Bar className="gapbar" from={shortStems / most} />
  </>
);
