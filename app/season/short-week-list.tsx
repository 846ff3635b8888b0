import { weekInWords } from "#lib/domain/day";
import type { Role } from "#lib/domain/words";
import type { ShortWeek } from "#lib/plan/road/short-weeks";
import { countOf } from "#lib/plan/words/numbers";

/** The short weeks of a role in words, before any chart; the other roles in one line each. */
export function ShortWeekList({ shorts, role }: { shorts: readonly ShortWeek[]; role: Role }) {
  const ofRole = shorts.filter((short) => short.role === role);
  const others = [...new Set(shorts.map((short) => short.role))].filter((other) => other !== role);
  return (
    <section aria-labelledby="short">
      <h2 id="short">Short weeks</h2>
      {ofRole.length === 0 ? (
        <p className="notice good">
          <span className="good-word">Every {role} stem is covered.</span>
        </p>
      ) : (
        <ul className="shortweeks">
          {ofRole.map(({ week, monday, shortStems, bookingCount }) => (
            <li key={week}>
              <a href={`/weeks/${week}`}>
                <strong>{weekInWords(monday)}:</strong>
                <span>
                  <span className="short-word">{countOf(shortStems, `${role} stem`)} short</span>,{" "}
                  {countOf(bookingCount, "booking")}
                </span>
              </a>
            </li>
          ))}
        </ul>
      )}
      {others.length > 0 && (
        <p className="small">
          Also short:{" "}
          {others.map((other, index) => {
            const weeks = shorts.filter((short) => short.role === other);
            const stems = weeks.reduce((sum, short) => sum + short.shortStems, 0);
            return (
              <span key={other}>
                {index > 0 && " · "}
                <a href={`/?role=${other}`}>
                  {countOf(stems, `${other} stem`)} in {countOf(weeks.length, "week")}
                </a>
              </span>
            );
          })}
        </p>
      )}
    </section>
  );
}
