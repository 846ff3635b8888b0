import { type Day, inShort, yearOf } from "#lib/domain/day";
import type { OpenDate } from "#lib/plan/chance/open-dates";
import { inWholes } from "../ui/numbers";

type Props = { dates: readonly OpenDate[]; bookingCountOf: (day: Day) => number; asked: Day | null };
type Size = { width: number; height: number; className: string };

const LEFT = 40;
const TOP = 10;
const DOTS = 44;
/** How far under the bars each square of a booking stands. */
const DOT_DEPTHS = [3, 10, 17, 24];
/** The name of a month that begins nearer to the right edge would run off the picture. */
const NAME_ROOM = 24;
const WIDE: Size = { width: 1120, height: 240, className: "chart chart-wide" };
const NARROW: Size = { width: 390, height: 220, className: "chart chart-narrow" };

/**
 * The season's Saturdays as bars of focal stems left, low to high as a line on them, with a square under a bar for each booking of its week.
 * A picture only: the table below holds the same numbers.
 */
export const DateStrip = (props: Props) => (
  <>
    <Strip {...props} size={WIDE} />
    <Strip {...props} size={NARROW} />
    <p className="small soft">
      A bar: focal stems left for that Saturday. A square under it: a booking in that week, up to {DOT_DEPTHS.length}{" "}
      drawn.
      {props.dates.some(({ band }) => band) && " A line on a bar: from a poor season to a good one."}
      {props.asked && " The outlined bar is nearest the day asked for."}
    </p>
  </>
);

function Strip({ dates, bookingCountOf, asked, size }: Props & { size: Size }) {
  const top = roundedUp(Math.max(10, ...dates.map(({ focalStems, band }) => Math.max(focalStems, band?.high ?? 0))));
  const step = (size.width - LEFT - 6) / Math.max(1, dates.length);
  const wide = Math.max(2, step * 0.7);
  const floor = size.height - DOTS;
  const y = (stems: number) => TOP + (floor - TOP) * (1 - stems / top);
  return (
    <svg
      className={size.className}
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={`Focal stems left on each Saturday of ${dates.length > 0 ? yearOf(dates[0].day) : "the season"}`}
    >
      {[0, 0.5, 1].map((share) => (
        <g key={share}>
          <line className="axis" x1={LEFT} x2={size.width - 4} y1={y(top * share)} y2={y(top * share)} />
          <text x={LEFT - 5} y={y(top * share) + 4} textAnchor="end">
            {inWholes(top * share)}
          </text>
        </g>
      ))}
      {dates.map(({ day, focalStems, band }, index) => {
        const x = LEFT + index * step + (step - wide) / 2;
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
            {band && (
              <line className="open-band" x1={x + wide / 2} x2={x + wide / 2} y1={y(band.low)} y2={y(band.high)} />
            )}
            {DOT_DEPTHS.slice(0, bookingCountOf(day)).map((depth) => (
              <rect key={depth} className="booked-dot" x={x + wide / 2 - 2.5} y={floor + depth} width="5" height="5" />
            ))}
            {isFirstOfMonth && x < size.width - NAME_ROOM && (index > 0 || !startsLate(dates)) && (
              <text x={x} y={size.height - 4}>
                {inShort(day).split(" ")[1]}
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

/** The next of a few round steps of a power of ten. */
function roundedUp(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return ([1, 1.5, 2, 3, 4, 6, 8, 10].find((step) => step * power >= most) ?? 10) * power;
}
