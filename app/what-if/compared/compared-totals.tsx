import type { ReactNode } from "react";
import type { Comparison, PlanTotals } from "#lib/plan/what-if/comparison";
import { inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { Table } from "../../ui/table";
import { COST, COVERED, type Sense, SHORT } from "./difference-words";
import { type ComparedPlan, planColumns } from "./plan-columns";

type Row = {
  words: string;
  sense: Sense;
  figure: (totals: PlanTotals) => number;
  shown?: (totals: PlanTotals) => ReactNode;
};

const labourOf = ({ winter }: PlanTotals): number => winter?.labourCents ?? 0;
const materialOf = ({ winter }: PlanTotals): number => winter?.materialCents ?? 0;

const ROWS: readonly Row[] = [
  { words: "Focal stems short", sense: SHORT, figure: ({ focalShortStems }) => focalShortStems },
  { words: "Stems short in all", sense: SHORT, figure: ({ shortStems }) => shortStems },
  {
    words: "Bookings covered in full",
    sense: COVERED,
    figure: ({ coveredBookingCount }) => coveredBookingCount,
    shown: ({ coveredBookingCount, bookingCount }) => `${inWholes(coveredBookingCount)} of ${inWholes(bookingCount)}`,
  },
  { words: "To buy in what is short", sense: COST, figure: ({ buyInCents }) => buyInCents },
  { words: "Labour to keep or dig", sense: COST, figure: labourOf },
  { words: "Materials to keep or dig", sense: COST, figure: materialOf },
  {
    words: "Buying in, labour and materials",
    sense: COST,
    figure: (totals) => totals.buyInCents + labourOf(totals) + materialOf(totals),
  },
];

/** The season in seven figures under each plan, and how far each is from the first. */
export const ComparedTotals = ({ plans, comparison }: { plans: readonly ComparedPlan[]; comparison: Comparison }) => (
  <Table
    caption="The season in figures"
    columns={[
      { head: "Figure", kind: "name", cell: ({ words }) => words },
      ...planColumns<Row>(
        plans,
        ({ shown, sense, figure }, index) => {
          const totals = comparison.totals[index];
          return shown?.(totals) ?? (sense.isMoney ? inRoundMoney : inWholes)(figure(totals));
        },
        ({ figure, sense }, index) => ({ difference: figure(comparison.differences[index]), sense }),
      ),
    ]}
    rows={ROWS}
    keyOf={({ words }) => words}
  />
);
