import { inShort, withWeekday } from "#lib/domain/day";
import type { Role } from "#lib/domain/words";
import type { Band } from "#lib/plan/road/season-band";
import type { Week } from "#lib/plan/road/weeks";
import { countOf, inWholes } from "../ui/numbers";

type Bar = { week: Week; band: Band; need: number; covered: number; short: number; reachable: number };
type Props = {
  weeks: readonly Week[];
  band: readonly Band[];
  role: Role;
  frostWeek: string;
  currentWeek: string;
};
type Size = { width: number; height: number; labelEvery: number };

const LEFT = 40;
const BOTTOM = 24;
const TOP = 14;
const WIDE: Size = { width: 1120, height: 300, labelEvery: 3 };
const NARROW: Size = { width: 390, height: 300, labelEvery: 8 };

/**
 * Week columns of one role: what can be cut as a pale ground, what is asked as a bar on it, its short part hatched. Drawn on the server, as a picture of
 * the table below it; once wide and once narrow, so that a phone need not scroll sideways.
 */
export function WeekChart(props: Props) {
  return (
    <>
      <Chart {...props} size={WIDE} className="chart chart-wide" />
      <Chart {...props} size={NARROW} className="chart chart-narrow" />
    </>
  );
}

function Chart({
  weeks,
  band,
  role,
  frostWeek,
  currentWeek,
  size,
  className,
}: Props & { size: Size; className: string }) {
  const bars = weeks.map((week, index) => barOf(week, band[index], role));
  const top = niceCeiling(
    Math.max(10, ...bars.map((bar) => Math.max(bar.need, Math.min(bar.reachable, 3 * maxNeed(bars))))),
  );
  const plotHeight = size.height - BOTTOM - TOP;
  const step = (size.width - LEFT - 6) / Math.max(1, bars.length);
  const y = (stems: number) => TOP + plotHeight * (1 - Math.min(stems, top) / top);
  const hatch = `hatch-${size.width}`;
  return (
    <svg
      className={className}
      viewBox={`0 0 ${size.width} ${size.height}`}
      aria-label={`Weeks of the season, ${role} stems`}
    >
      <title>{`${role} stems needed and within reach, week by week; the same numbers stand in the table below`}</title>
      <defs>
        <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width="7" height="7" className="hatch-ground" />
          <line x1="0" y1="0" x2="0" y2="7" className="hatch-line" />
        </pattern>
      </defs>
      {[0, 0.25, 0.5, 0.75, 1].map((share) => (
        <g key={share}>
          <line className="axis" x1={LEFT} x2={size.width - 4} y1={y(top * share)} y2={y(top * share)} />
          <text x={LEFT - 5} y={y(top * share) + 4} textAnchor="end">
            {inWholes(top * share)}
          </text>
        </g>
      ))}
      {bars.map((bar, index) => {
        const x = LEFT + index * step;
        const wide = Math.max(2, step - 2);
        return (
          <a key={bar.week.week} href={`/weeks/${bar.week.week}`} aria-label={barInWords(bar, role)}>
            <rect className="reach" x={x + 1} y={y(bar.reachable)} width={wide} height={y(0) - y(bar.reachable)} />
            <rect
              className="covered"
              x={x + 1 + wide * 0.2}
              y={y(bar.covered)}
              width={wide * 0.6}
              height={y(0) - y(bar.covered)}
            />
            {bar.short > 0 && (
              <rect
                className="short-bar"
                fill={`url(#${hatch})`}
                x={x + 1 + wide * 0.2}
                y={y(bar.need)}
                width={wide * 0.6}
                height={y(bar.covered) - y(bar.need)}
              />
            )}
            {bar.band.highStems > 0 && (
              <path
                className="band"
                d={`M${x + 1} ${y(bar.band.lowStems)}h${wide}M${x + 1} ${y(bar.band.highStems)}h${wide}M${x + 1 + wide / 2} ${y(bar.band.lowStems)}V${y(bar.band.highStems)}`}
              />
            )}
            {bar.week.week === frostWeek && (
              <line className="frost" x1={x + step / 2} x2={x + step / 2} y1={TOP} y2={y(0)} />
            )}
            {bar.week.week === currentWeek && <line className="now" x1={x} x2={x} y1={TOP} y2={y(0)} />}
            <rect className="week-hit" x={x} y={TOP} width={step} height={plotHeight} />
            <title>{barInWords(bar, role)}</title>
          </a>
        );
      })}
      {bars.map((bar, index) =>
        index % size.labelEvery === 0 && index <= bars.length - size.labelEvery / 2 ? (
          <text key={bar.week.week} x={LEFT + index * step} y={size.height - 7}>
            {inShort(bar.week.monday)}
          </text>
        ) : null,
      )}
    </svg>
  );
}

const maxNeed = (bars: readonly Bar[]): number => Math.max(10, ...bars.map((bar) => bar.need));

function barOf(week: Week, band: Band, role: Role): Bar {
  const found = week.roles.find((row) => row.role === role);
  return {
    week,
    band,
    need: found?.needStems ?? 0,
    covered: found?.coveredStems ?? 0,
    short: found?.shortStems ?? 0,
    reachable: found?.reachableStems ?? 0,
  };
}

const barInWords = (bar: Bar, role: Role): string =>
  `Week of ${withWeekday(bar.week.monday)}: ${countOf(bar.need, `${role} stem`)} needed, ${
    bar.short > 0 ? `${inWholes(bar.short)} short` : "all covered"
  }, ${inWholes(bar.reachable)} within reach (${inWholes(bar.band.lowStems)} in a poor year, ${inWholes(bar.band.highStems)} in a rich one)`;

/** The next of 1, 2, 2.5, 5 × a power of ten. */
function niceCeiling(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return ([1, 2, 2.5, 4, 5, 8, 10].find((step) => step * power >= most) ?? 10) * power;
}
