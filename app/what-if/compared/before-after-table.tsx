import { weekInWords } from "#lib/domain/day";
import type { WeekRole } from "#lib/plan/road/weeks";
import type { ComparedWeek } from "#lib/plan/what-if/comparison";
import { inWholes } from "../../ui/numbers";

const COLUMNS: readonly { words: string; figure: (role: WeekRole) => number }[] = [
  { words: "Needed, stems", figure: ({ needStems }) => needStems },
  { words: "Covered, stems", figure: ({ coveredStems }) => coveredStems },
  { words: "Short, stems", figure: ({ shortStems }) => shortStems },
  { words: "Within reach, stems", figure: ({ reachableStems }) => reachableStems },
];

/** The numbers of the two pictures; "120 → 80" where they differ. */
export const BeforeAfterTable = ({ weeks }: { weeks: readonly ComparedWeek[] }) => (
  <details>
    <summary>The same numbers as a table</summary>
    <table className="cards-on-phone">
      <caption>Focal stems by week, as it stands → in this what-if</caption>
      <thead>
        <tr>
          <th scope="col">Week</th>
          {COLUMNS.map(({ words }) => (
            <th scope="col" className="number" key={words}>
              {words}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {weeks
          .filter(({ focal }) => focal.some(({ needStems, reachableStems }) => needStems + reachableStems > 0))
          .map(({ week, monday, focal: [before, after] }) => (
            <tr key={week} className={after.shortStems > 0 ? "short-row" : undefined}>
              <th scope="row">
                <a href={`/weeks/${week}`}>{weekInWords(monday)}</a>
              </th>
              {COLUMNS.map(({ words, figure }) => (
                <td className="number" data-label={words} key={words}>
                  <Changed before={figure(before)} after={figure(after)} />
                </td>
              ))}
            </tr>
          ))}
      </tbody>
    </table>
  </details>
);

function Changed({ before, after }: { before: number; after: number }) {
  if (before === after) return inWholes(after);
  return (
    <>
      {inWholes(before)} <span aria-hidden="true">→</span>
      <span className="visually-hidden"> becomes </span> <strong>{inWholes(after)}</strong>
    </>
  );
}
