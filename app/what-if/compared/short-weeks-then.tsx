import { inShort, weekInWords } from "#lib/domain/day";
import type { ComparedWeek } from "#lib/plan/what-if/comparison";
import { inWholes } from "#lib/plan/words/numbers";
import { Difference, SHORT } from "./difference-words";

/** Each week that is short before or after, in words. */
export function ShortWeeksThen({ weeks }: { weeks: readonly ComparedWeek[] }) {
  const short = weeks.filter(({ focal }) => focal.some(({ shortStems }) => shortStems > 0));
  if (short.length === 0)
    return (
      <p className="notice good">
        <span className="good-word">No focal stem is short in any week, now or then.</span>
      </p>
    );
  const moved = short.filter(({ focal: [before, after] }) => before.shortStems !== after.shortStems);
  const still = short.filter((week) => !moved.includes(week));
  return (
    <>
      {moved.length > 0 && <MovedWeeks weeks={moved} />}
      {still.length > 0 && (
        <p>
          {moved.length > 0 ? "Short as before: " : "Every short week stays as it is: "}
          {still.map(({ monday, focal }) => `${inShort(monday)} (${inWholes(focal[0].shortStems)})`).join(", ")}.
        </p>
      )}
    </>
  );
}

function MovedWeeks({ weeks }: { weeks: readonly ComparedWeek[] }) {
  return (
    <ul className="shortweeks">
      {weeks.map(({ week, monday, focal: [before, after] }) => (
        <li key={week}>
          <a href={`/weeks/${week}`} className={after.shortStems === 0 ? "closed" : undefined}>
            <strong>{weekInWords(monday)}:</strong>
            <span>
              {shortInWords(before.shortStems)} → {shortInWords(after.shortStems)}
              {", "}
              <Difference difference={after.shortStems - before.shortStems} sense={SHORT} />
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
}

const shortInWords = (shortStems: number): string =>
  shortStems === 0 ? "none short" : `${inWholes(shortStems)} focal short`;
