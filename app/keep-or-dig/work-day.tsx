import type { Day } from "#lib/domain/day";
import type { Units } from "#lib/domain/words";
import type { WinterTask } from "#lib/plan/winter-worksheet";
import { countOf, inTenths, inWholes } from "../ui/numbers";
import { MEASURES } from "../ui/units";

type Props = { title: string; day: Day; tasks: readonly WinterTask[]; units: Units };

/** One day of the winter's work on one sheet: what to do in which bed, what it takes, a box to tick and room to write. */
export function WorkDay({ title, day, tasks, units }: Props) {
  const hours = tasks.reduce((sum, task) => sum + task.hours, 0);
  const takes = takesInWords(sumOf(tasks), units);
  return (
    <section className="page" aria-labelledby={`day-${day}`}>
      <h2 id={`day-${day}`}>{title}</h2>
      <p>
        {countOf(new Set(tasks.map(({ bedId }) => bedId)).size, "bed")}
        {hours > 0 && `, about ${inTenths(hours)} hours`}
        {takes && `, ${takes}`}
      </p>
      <table className="cards-on-phone work-day">
        <thead>
          <tr>
            <th scope="col">Done</th>
            <th scope="col">Bed</th>
            <th scope="col">What to do</th>
            <th scope="col">It takes</th>
            <th scope="col" className="number">
              Hours
            </th>
            <th scope="col">Counted, noted</th>
          </tr>
        </thead>
        <tbody>
          {tasks.map((task) => (
            <tr key={`${task.bedId} ${task.words}`}>
              <td>
                <span className="tickbox" role="img" aria-label="box to tick" />
              </td>
              <th scope="row">
                {task.bedName} <span className="tag">{task.fate}</span>
              </th>
              <td>{task.words}</td>
              <td data-label="It takes">{takesInWords(task, units) || "–"}</td>
              <td className="number" data-label="Hours">
                {task.hours > 0 ? inTenths(task.hours) : "–"}
              </td>
              <td data-label="Counted, noted">
                <span className="write-line" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

type Takes = Pick<WinterTask, "clumpCount" | "leafCubicMetres" | "tarpSquareMetres">;

const sumOf = (tasks: readonly Takes[]): Takes => ({
  clumpCount: tasks.reduce((sum, task) => sum + task.clumpCount, 0),
  leafCubicMetres: tasks.reduce((sum, task) => sum + task.leafCubicMetres, 0),
  tarpSquareMetres: tasks.reduce((sum, task) => sum + task.tarpSquareMetres, 0),
});

/** "80 clumps, 4.7 cubic yards of leaves"; empty when it takes nothing. */
function takesInWords({ clumpCount, leafCubicMetres, tarpSquareMetres }: Takes, units: Units): string {
  const { volume, area } = MEASURES[units];
  return [
    clumpCount > 0 && countOf(clumpCount, "clump"),
    leafCubicMetres > 0 && `${inTenths(leafCubicMetres * volume.shownPerStored)} ${volume.word} of leaves`,
    tarpSquareMetres > 0 && `${inWholes(tarpSquareMetres * area.shownPerStored)} ${area.word} of tarp`,
  ]
    .filter((part) => part !== false)
    .join(", ");
}
