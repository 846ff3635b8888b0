import { type Day, toDay, withWeekday, yearOf } from "#lib/domain/day";
import { daysNotRecorded } from "#lib/plan/road/day-to-cut";
import { countOf } from "#lib/plan/words/numbers";
import { loadPlan } from "../load";

/** Picking days behind today of which something is not recorded: it counts as cut as planned until somebody says otherwise. */
export function NotRecorded({ from, today }: { from: Day; today: Day }) {
  const days = daysNotRecorded(loadPlan(yearOf(today)).pickList, from, today);
  if (days.length === 0) return null;
  return (
    <details className="fold">
      <summary>
        Not recorded: {countOf(days.length, "picking day")} <small>counted as cut as planned</small>
      </summary>
      <ul className="done-rows">
        {days.map(({ day, stemsToCut }) => (
          <li key={day}>
            <a href={`/today?day=${toDay(day)}`}>{withWeekday(toDay(day))}</a>
            <span>{countOf(stemsToCut, "stem")}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
