import { inShort } from "#lib/domain/day";
import type { ComparedWeek } from "#lib/plan/what-if/comparison";
import { Hatch, WeekBar } from "../../season/week-bar";
import { AXIS_WIDTH, AxisLines, axisTo } from "../../ui/axis";

const WIDTH = 520;
const HEIGHT = 250;
const BOTTOM = 24;
const TOP = 10;
const LABEL_EVERY = 6;

type Props = { title: string; weeks: readonly ComparedWeek[]; planIndex: number; mostStems: number };

/**
 * Focal stems week by week under one plan: within reach as a pale ground, needed as a bar, its short part hatched. `mostStems` is the most that
 * must show, the same for every picture that stands beside it. A picture only: the numbers stand in the table below.
 */
export function FocalChart({ title, weeks, planIndex, mostStems }: Props) {
  const step = (WIDTH - AXIS_WIDTH - 6) / Math.max(1, weeks.length);
  const axis = axisTo(mostStems, { topAt: TOP, floorAt: HEIGHT - BOTTOM, tickCount: 4 });
  const hatch = `focal-hatch-${planIndex}`;
  return (
    <figure className="focal-chart">
      <figcaption>{title}</figcaption>
      <svg
        className="chart"
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={`Focal stems week by week, ${title}`}
      >
        <Hatch id={hatch} />
        <AxisLines axis={axis} width={WIDTH} />
        {weeks.map(({ week, monday, focal }, index) => {
          const x = AXIS_WIDTH + index * step;
          return (
            <g key={week}>
              <WeekBar stems={focal[planIndex]} x={x + 1} width={Math.max(2, step - 2)} y={axis.y} hatchId={hatch} />
              {index % LABEL_EVERY === 0 && index <= weeks.length - LABEL_EVERY / 2 && (
                <text x={x} y={HEIGHT - 7}>
                  {inShort(monday)}
                </text>
              )}
            </g>
          );
        })}
      </svg>
    </figure>
  );
}
