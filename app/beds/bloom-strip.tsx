import { monthInShort, toDay } from "#lib/domain/day";
import type { ColourWeeks, WeekSpan } from "./bed-lines";

const WEEK_WIDTH = 10;
const HEIGHT = 24;

/** What is cut week by week, stacked by colour, one path for each colour. The highest week fills it; the words beside it carry the sum. */
export function BloomStrip({ colours, weeks: { count } }: { colours: readonly ColourWeeks[]; weeks: WeekSpan }) {
  const sums = Array.from({ length: count }, (_, week) => colours.reduce((sum, { stems }) => sum + stems[week], 0));
  const scale = (HEIGHT - 2) / Math.max(1, ...sums);
  const bottoms = new Array<number>(count).fill(HEIGHT - 1);
  return (
    <svg
      className="bloom-strip"
      viewBox={`0 0 ${count * WEEK_WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {colours.map(({ colour, stems }) => (
        <path key={colour} className={`bar f-${colour}`} d={barsPath(stems, scale, bottoms)} />
      ))}
      <path className="strip-soil" d={`M0 ${HEIGHT - 0.6}H${count * WEEK_WIDTH}`} />
    </svg>
  );
}

/** Bars standing on what lies in `bottoms`, which rise by them. */
function barsPath(stems: readonly number[], scale: number, bottoms: number[]): string {
  let path = "";
  stems.forEach((ofWeek, week) => {
    if (ofWeek === 0) return;
    const height = ofWeek * scale;
    bottoms[week] -= height;
    path += `M${week * WEEK_WIDTH + 0.7} ${bottoms[week].toFixed(1)}h8.6v${height.toFixed(1)}h-8.6z`;
  });
  return path;
}

/** Weeks that the name of a month takes: one that ends sooner goes unnamed. */
const NAME_WEEKS = 3;

/** The names of the months over strips of the same weeks. */
export function StripMonths({ weeks: { first, count } }: { weeks: WeekSpan }) {
  const months = Array.from({ length: count }, (_, week) => monthInShort(toDay(first + 7 * week)));
  return (
    <svg className="strip-months" viewBox={`0 0 ${count * WEEK_WIDTH} 14`} aria-hidden="true">
      {months.map((name, week) => {
        const isNamed = name !== months[week - 1] && (months[week + NAME_WEEKS - 1] ?? name) === name;
        return (
          isNamed && (
            <text key={name} x={week * WEEK_WIDTH + 2} y="11">
              {name}
            </text>
          )
        );
      })}
    </svg>
  );
}
