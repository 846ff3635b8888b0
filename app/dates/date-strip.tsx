import { type Day, monthInShort, yearOf } from "#lib/domain/day";
import type { OpenDate } from "#lib/plan/road/open-dates";
import { AXIS_WIDTH, AxisLines, axisTo } from "../ui/axis";

type Props = { dates: readonly OpenDate[]; bookingCountOf: (day: Day) => number; asked: Day | null };
type Size = { width: number; height: number; className: string };

const TOP = 10;
const DOTS = 44;
/** How far under the bars each square of a booking stands. */
const DOT_DEPTHS = [3, 10, 17, 24];
/** The name of a month that begins nearer to the right edge would run off the picture. */
const NAME_ROOM = 24;
const WIDE: Size = { width: 1120, height: 240, className: "chart chart-wide" };
const NARROW: Size = { width: 390, height: 220, className: "chart chart-narrow" };

/**
 * The season's Saturdays as bars of focal stems left, what a poor year leaves as the full part of each, with a square under a bar for each booking of its week.
 * A picture only: the table below holds the same numbers.
 */
export const DateStrip = (props: Props) => (
  <>
    <Strip {...props} size={WIDE} />
    <Strip {...props} size={NARROW} />
    <p className="small soft">
      A bar: focal stems likely to be left for that Saturday; its full part can be promised, a poor year leaves as many.
      A square under it: a booking in that week, up to {DOT_DEPTHS.length} drawn.
      {props.asked && " The outlined bar is nearest the day asked for."}
    </p>
  </>
);

function Strip({ dates, bookingCountOf, asked, size }: Props & { size: Size }) {
  const step = (size.width - AXIS_WIDTH - 6) / Math.max(1, dates.length);
  const wide = Math.max(2, step * 0.7);
  const floor = size.height - DOTS;
  const most = Math.max(0, ...dates.map(({ focalStems }) => focalStems));
  const axis = axisTo(most, { topAt: TOP, floorAt: floor, tickCount: 4 });
  const { y } = axis;
  return (
    <svg
      className={size.className}
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={`Focal stems left on each Saturday of ${dates.length > 0 ? yearOf(dates[0].day) : "the season"}`}
    >
      <AxisLines axis={axis} width={size.width} />
      {dates.map(({ day, focalStems, poorYearStems }, index) => {
        const x = AXIS_WIDTH + index * step + (step - wide) / 2;
        const isFirstOfMonth = index === 0 || dates[index - 1].day.slice(5, 7) !== day.slice(5, 7);
        return (
          <g key={day}>
            <rect
              className={day === asked ? "open-bar asked" : "open-bar"}
              x={x}
              width={wide}
              y={y(focalStems)}
              height={floor - y(focalStems)}
            />
            <rect className="sure-bar" x={x} width={wide} y={y(poorYearStems)} height={floor - y(poorYearStems)} />
            {DOT_DEPTHS.slice(0, bookingCountOf(day)).map((depth) => (
              <rect key={depth} className="booked-dot" x={x + wide / 2 - 2.5} y={floor + depth} width="5" height="5" />
            ))}
            {isFirstOfMonth && x < size.width - NAME_ROOM && (index > 0 || !startsLate(dates)) && (
              <text x={x} y={size.height - 4}>
                {monthInShort(day)}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}

/** A month of one Saturday at the start has no room for its name. */
const startsLate = ([first, second]: readonly OpenDate[]): boolean =>
  second !== undefined && first.day.slice(5, 7) !== second.day.slice(5, 7);
