import type { Units } from "#lib/domain/words";
import type { WinterTask } from "#lib/plan/winter/worksheet";
import { inTenths } from "../../ui/numbers";
import { takesInWords } from "./takes-words";

type Props = {
  /** `what` is null where the heading above says it for all rows. */
  rows: readonly { readonly task: WinterTask; readonly what: string | null }[];
  units: Units;
  words: string;
};

/** Beds of one day's work: a box to tick, what it takes, room to write. */
export function TaskTable({ rows, units, words }: Props) {
  const hasWhat = rows.some(({ what }) => what !== null);
  return (
    <table className="cards-on-phone work-day">
      <caption className="visually-hidden">{words}</caption>
      <thead>
        <tr>
          <th scope="col">Done</th>
          <th scope="col">Bed</th>
          {hasWhat && <th scope="col">What to do</th>}
          <th scope="col">It takes</th>
          <th scope="col">Counted, noted</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ task, what }) => (
          <tr key={`${task.bedId} ${task.words}`}>
            <td>
              <span className="tickbox" role="img" aria-label="box to tick" />
            </td>
            <th scope="row">{task.bedName}</th>
            {hasWhat && <td className="what">{what}</td>}
            <td data-label="It takes" className="takes">
              {allOf(task, units) || "–"}
            </td>
            <td data-label="Counted, noted">
              <span className="write-line" />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const allOf = (task: WinterTask, units: Units): string =>
  [takesInWords(task, units), task.hours > 0 && `${inTenths(task.hours)} hours`].filter(Boolean).join(", ");
