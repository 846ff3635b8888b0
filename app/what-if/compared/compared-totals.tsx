import type { ReactNode } from "react";
import type { Comparison, PlanTotals } from "#lib/plan/what-if/comparison";
import { inRoundMoney, inWholes } from "../../ui/numbers";
import type { Column } from "./column";
import { COST, COVERED, Difference, type Sense, SHORT } from "./difference-words";

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
export function ComparedTotals({ columns, comparison }: { columns: readonly Column[]; comparison: Comparison }) {
  return (
    <table className="cards-on-phone">
      <caption>The season in figures</caption>
      <thead>
        <tr>
          <th scope="col">Figure</th>
          {columns.map(({ id, name }) => (
            <th scope="col" className="number" key={id}>
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {ROWS.map(({ words, sense, figure, shown }) => (
          <tr key={words}>
            <th scope="row">{words}</th>
            {comparison.totals.map((totals, index) => (
              <td className="number" data-label={columns[index].name} key={columns[index].id}>
                {shown?.(totals) ?? (sense.isMoney ? inRoundMoney(figure(totals)) : inWholes(figure(totals)))}
                {index > 0 && (
                  <>
                    {" "}
                    <span className="beneath">
                      <Difference difference={figure(comparison.differences[index])} sense={sense} />
                    </span>
                  </>
                )}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
