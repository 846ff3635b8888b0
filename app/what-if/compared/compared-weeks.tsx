import { weekInWords } from "#lib/domain/day";
import type { ComparedWeek } from "#lib/plan/what-if/comparison";
import { inWholes } from "../../ui/numbers";
import type { Column } from "./column";
import { Difference, SHORT } from "./difference-words";

/** Focal stems short in each week under each plan: a number, a bar, and how far it is from the first. */
export function ComparedWeeks({ columns, weeks }: { columns: readonly Column[]; weeks: readonly ComparedWeek[] }) {
  const short = weeks.filter(({ focal }) => focal.some(({ shortStems }) => shortStems > 0));
  if (short.length === 0)
    return (
      <p className="notice good">
        <span className="good-word">No focal stem is short in any week, in any of them.</span>
      </p>
    );
  const most = Math.max(...short.flatMap(({ focal }) => focal.map(({ shortStems }) => shortStems)));
  return (
    <table className="cards-on-phone">
      <caption>Focal stems short, week by week</caption>
      <thead>
        <tr>
          <th scope="col">Week</th>
          {columns.map(({ id, name }) => (
            <th scope="col" className="number" key={id}>
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {short.map(({ monday, week, focal }) => (
          <tr key={week}>
            <th scope="row">
              <a href={`/weeks/${week}`}>{weekInWords(monday)}</a>
            </th>
            {focal.map(({ shortStems, needStems }, index) => (
              <td className="number" data-label={columns[index].name} key={columns[index].id}>
                {shortStems > 0 ? (
                  <strong className="short-word">{inWholes(shortStems)}</strong>
                ) : (
                  <span className="good-word">{needStems > 0 ? "0" : "0, none asked"}</span>
                )}{" "}
                <span className="gapbar" aria-hidden="true">
                  {shortStems > 0 && <span style={{ width: `${Math.ceil((100 * shortStems) / most)}%` }} />}
                </span>
                {index > 0 && (
                  <>
                    {" "}
                    <span className="beneath">
                      <Difference difference={shortStems - focal[0].shortStems} sense={SHORT} />
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
