import { dayInYear, type MonthDay, monthDayInShort, PLAIN_YEAR, parseDay, toDayNumber } from "#lib/domain/day";
import type { FrostDates } from "#lib/domain/records/farm-settings";

const WIDTH = 384;
const NEW_YEAR = toDayNumber(parseDay(`${PLAIN_YEAR}-01-01`));
const x = (monthDay: MonthDay): number => ((toDayNumber(dayInYear(monthDay, PLAIN_YEAR)) - NEW_YEAR) / 365) * WIDTH;

/** The year as a line: free of frost between the middle dates, one year in ten on either side of each. */
export function FrostLine({ frost }: { frost: FrostDates }) {
  const { lastSpringP10, lastSpringP50, lastSpringP90, firstAutumnP10, firstAutumnP50, firstAutumnP90 } = frost;
  const words = `Last frost of spring: ${listed(lastSpringP90, lastSpringP50, lastSpringP10)}. First frost of autumn: ${listed(firstAutumnP10, firstAutumnP50, firstAutumnP90)}. Early, middle and late year.`;
  return (
    <svg className="frost-line" viewBox={`0 0 ${WIDTH} 62`} role="img" aria-label={words}>
      <path className="frost-year" d={`M0 30H${WIDTH}`} />
      <path className="frost-free" d={`M${x(lastSpringP50)} 30H${x(firstAutumnP50)}`} />
      {[lastSpringP50, firstAutumnP50].map((on) => (
        <g key={on}>
          <path className="frost-tick" d={`M${x(on)} 30v-7`} />
          <text className="frost-middle" x={x(on)} y="17" textAnchor="middle">
            {monthDayInShort(on)}
          </text>
        </g>
      ))}
      {[
        { on: lastSpringP90, anchor: "end" as const },
        { on: lastSpringP10, anchor: "start" as const },
        { on: firstAutumnP10, anchor: "end" as const },
        { on: firstAutumnP90, anchor: "start" as const },
      ].map(({ on, anchor }) => (
        <g key={`${on} ${anchor}`}>
          <path className="frost-tick" d={`M${x(on)} 30v7`} />
          <text x={x(on) + (anchor === "end" ? 6 : -6)} y="52" textAnchor={anchor}>
            {monthDayInShort(on)}
          </text>
        </g>
      ))}
      <text x={(x(lastSpringP50) + x(firstAutumnP50)) / 2} y="17" textAnchor="middle">
        free of frost
      </text>
    </svg>
  );
}

const listed = (...days: readonly MonthDay[]): string => days.map(monthDayInShort).join(", ");
