import { type Day, weekInWords } from "#lib/domain/day";
import type { ComparedWeek } from "#lib/plan/what-if/comparison";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { Bar } from "../../ui/bar";
import { Table } from "../../ui/table";
import { SHORT } from "./difference-words";
import { type ComparedPlan, planColumns } from "./plan-columns";

type Props = {
  readonly plans: readonly ComparedPlan[];
  readonly weeks: readonly ComparedWeek[];
  /** The Monday of the week at hand: weeks before it are folded. */
  readonly thisMonday: Day;
};

/** Focal stems short in each week under each plan: a number, a bar, and how far it is from the first. */
export function ComparedWeeks({ plans, weeks, thisMonday }: Props) {
  const short = weeks.filter(({ focal }) => focal.some(({ shortStems }) => shortStems > 0));
  if (short.length === 0)
    return (
      <p className="notice good">
        <span className="good-word">No focal stem is short in any week, in any of them.</span>
      </p>
    );
  const most = Math.max(...short.flatMap(({ focal }) => focal.map(({ shortStems }) => shortStems)));
  const gone = short.filter(({ monday }) => monday < thisMonday);
  const table = (caption: string, rows: readonly ComparedWeek[]) => (
    <Table
      caption={caption}
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
      rows={rows}
      keyOf={({ week }) => week}
    />
  );
  return (
    <>
      {gone.length > 0 && (
        <details className="fold">
          <summary>{countOf(gone.length, "short week")} gone by</summary>
          {table("Focal stems short in weeks gone by", gone)}
        </details>
      )}
      {gone.length < short.length &&
        table(
          "Focal stems short, week by week",
          short.filter(({ monday }) => monday >= thisMonday),
        )}
    </>
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
