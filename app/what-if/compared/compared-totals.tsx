import { type Comparison, type PlanTotals, winterCents } from "#lib/plan/what-if/comparison";
import { inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { Table } from "../../ui/table";
import { COST, COVERED, type Sense, SHORT } from "./difference-words";
import { type ComparedPlan, planColumns } from "./plan-columns";

type Row = {
  words: string;
  sense: Sense;
  figure: (totals: PlanTotals) => number;
};

const ROWS: readonly Row[] = [
  { words: "stems short", sense: SHORT, figure: ({ shortStems }) => shortStems },
  { words: "of them focal", sense: SHORT, figure: ({ focalShortStems }) => focalShortStems },
  { words: "to buy in", sense: COST, figure: ({ buyInCents }) => buyInCents },
  { words: "the winter’s beds", sense: COST, figure: ({ winter }) => winterCents(winter) },
  { words: "bookings", sense: COVERED, figure: ({ bookingCount }) => bookingCount },
  { words: "bookings in full", sense: COVERED, figure: ({ coveredBookingCount }) => coveredBookingCount },
];

/** The season in figures under each plan, and how far each is from the first: only the figures that change in one of them. */
export function ComparedTotals({ plans, comparison }: { plans: readonly ComparedPlan[]; comparison: Comparison }) {
  const rows = ROWS.filter(({ figure }) => comparison.differences.some((one) => figure(one) !== 0));
  if (rows.length === 0) return null;
  return (
    <Table
      caption="The figures that change"
      isCaptionHidden
      className="compared-totals"
      columns={[
        { head: "Figure", headShown: <span />, kind: "name", cell: ({ words }) => words },
        ...planColumns<Row>(
          plans,
          ({ sense, figure }, index) => (sense.isMoney ? inRoundMoney : inWholes)(figure(comparison.totals[index])),
          ({ figure, sense }, index) => ({ difference: figure(comparison.differences[index]), sense }),
        ),
      ]}
      rows={rows}
      keyOf={({ words }) => words}
      isNarrow
    />
  );
}
