import { countOf, inWholes } from "#lib/plan/words/numbers";
import type { AnswerView } from "./answer/answer-view";
import { lotsInWords } from "./lot-words";

/** "The Withy Lane wedding has 30, and 2 others" */
const firstOf = ([first, ...more]: AnswerView["holders"]): string =>
  `${first.client} has ${inWholes(first.stems)}${more.length > 0 ? `, and ${countOf(more.length, "other")}` : ""}`;

/** Why the rest is not to be had, and who has the stems it would take, by name. Nothing where all is likely. */
export function Holders({ view: { reasons, holders } }: { view: AnswerView }) {
  if (reasons.length === 0) return null;
  return (
    <details className="fold enquiry-holders">
      <summary>{holders.length > 0 ? `Who has the rest: ${firstOf(holders)}` : "Why not more"}</summary>
      <ul className="reasons">
        {reasons.map((reason) => (
          <li key={reason}>{reason}.</li>
        ))}
      </ul>
      <ul className="holders">
        {holders.map(({ id, client, day, stems, lots }) => (
          <li key={id}>
            <span>
              <a href={`/bookings/${id}`}>{client}</a> <small>{day}</small>
            </span>
            <span className="small">{lotsInWords(lots)}</span>
            <b className="number">{inWholes(stems)}</b>
          </li>
        ))}
      </ul>
    </details>
  );
}
