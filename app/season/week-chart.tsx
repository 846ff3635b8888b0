import { inShort, withWeekday } from "#lib/domain/day";
import type { Role } from "#lib/domain/words";
import type { Band } from "#lib/plan/road/season-band";
import type { Week, WeekRole } from "#lib/plan/road/weeks";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { AXIS_WIDTH, AxisLines, axisTo } from "../ui/axis";
import { Hatch, WeekBar } from "./week-bar";

type Bar = { week: Week; band: Band; stems: Omit<WeekRole, "role"> };
type Props = {
  weeks: readonly Week[];
  band: readonly Band[];
  role: Role;
  frostWeek: string;
  currentWeek: string;
};
type Size = { width: number; height: number; labelEvery: number };

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
  const mostNeed = Math.max(10, ...bars.map(({ stems }) => stems.needStems));
  const axis = axisTo(Math.max(mostNeed, ...bars.map(({ stems }) => Math.min(stems.reachableStems, 3 * mostNeed))), {
    topAt: TOP,
    floorAt: size.height - BOTTOM,
    tickCount: 4,
  });
  const { y } = axis;
  const step = (size.width - AXIS_WIDTH - 6) / Math.max(1, bars.length);
  const hatch = `hatch-${size.width}`;
  return (
    <svg
      className={className}
      viewBox={`0 0 ${size.width} ${size.height}`}
      aria-label={`Weeks of the season, ${role} stems`}
    >
      <title>{`${role} stems needed and within reach, week by week; the same numbers stand in the table below`}</title>
      <Hatch id={hatch} />
      <AxisLines axis={axis} width={size.width} />
      {bars.map((bar, index) => {
        const x = AXIS_WIDTH + index * step;
        const wide = Math.max(2, step - 2);
        return (
          <a key={bar.week.week} href={`/weeks/${bar.week.week}`} aria-label={barInWords(bar, role)}>
            <WeekBar stems={bar.stems} x={x + 1} width={wide} y={y} hatchId={hatch} />
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
            <rect className="week-hit" x={x} y={TOP} width={step} height={axis.height} />
            <title>{barInWords(bar, role)}</title>
          </a>
        );
      })}
      {bars.map((bar, index) =>
        index % size.labelEvery === 0 && index <= bars.length - size.labelEvery / 2 ? (
          <text key={bar.week.week} x={AXIS_WIDTH + index * step} y={size.height - 7}>
            {inShort(bar.week.monday)}
          </text>
        ) : null,
      )}
    </svg>
  );
}

const NO_STEMS = { needStems: 0, coveredStems: 0, shortStems: 0, reachableStems: 0 };

const barOf = (week: Week, band: Band, role: Role): Bar => ({
  week,
  band,
  stems: week.roles.find((row) => row.role === role) ?? NO_STEMS,
});

const barInWords = ({ week, band, stems }: Bar, role: Role): string =>
  `Week of ${withWeekday(week.monday)}: ${countOf(stems.needStems, `${role} stem`)} needed, ${
    stems.shortStems > 0 ? `${inWholes(stems.shortStems)} short` : "all covered"
  }, ${inWholes(stems.reachableStems)} within reach (${inWholes(band.lowStems)} in a poor year, ${inWholes(band.highStems)} in a rich one)`;
