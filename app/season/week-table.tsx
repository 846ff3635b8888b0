import { weekInWords } from "#lib/domain/day";
import type { Role } from "#lib/domain/words";
import type { Band } from "#lib/plan/road/season-band";
import type { Week } from "#lib/plan/road/weeks";
import { inWholes } from "../ui/numbers";

/** The numbers of the week chart. Weeks in which nothing is asked are left out unless something blooms. */
export function WeekTable({ weeks, band, role }: { weeks: readonly Week[]; band: readonly Band[]; role: Role }) {
  return (
    <details>
      <summary>The same numbers as a table</summary>
      <table className="cards-on-phone">
        <caption>{role} stems by week</caption>
        <thead>
          <tr>
            <th scope="col">Week</th>
            <th scope="col" className="number">
              Events
            </th>
            <th scope="col" className="number">
              Needed, stems
            </th>
            <th scope="col" className="number">
              Covered, stems
            </th>
            <th scope="col" className="number">
              Short, stems
            </th>
            <th scope="col" className="number">
              Within reach, stems
            </th>
            <th scope="col" className="number">
              Low to high, stems
            </th>
          </tr>
        </thead>
        <tbody>
          {weeks.map(({ week, monday, bookingIds, roles }, index) => {
            const row = roles.find((found) => found.role === role);
            if (!row || row.needStems + row.reachableStems === 0) return null;
            return (
              <tr key={week} className={row.shortStems > 0 ? "short-row" : undefined}>
                <th scope="row">
                  <a href={`/weeks/${week}`}>{weekInWords(monday)}</a>{" "}
                  <span className="soft small">{week.slice(5)}</span>
                </th>
                <td className="number" data-label="Events">
                  {bookingIds.length}
                </td>
                <td className="number" data-label="Needed">
                  {inWholes(row.needStems)}
                </td>
                <td className="number" data-label="Covered">
                  {inWholes(row.coveredStems)}
                </td>
                <td className="number" data-label="Short">
                  {row.shortStems > 0 ? <strong className="short-word">{inWholes(row.shortStems)}</strong> : "0"}
                </td>
                <td className="number" data-label="Within reach">
                  {inWholes(row.reachableStems)}
                </td>
                <td className="number" data-label="Low to high">
                  {inWholes(band[index].lowStems)} to {inWholes(band[index].highStems)}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </details>
  );
}
