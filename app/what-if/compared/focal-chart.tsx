import { inShort } from "#lib/domain/day";
import type { WeekRole } from "#lib/plan/road/weeks";
import type { ComparedWeek } from "#lib/plan/what-if/comparison";
import { inWholes } from "../../ui/numbers";

const WIDTH = 520;
const HEIGHT = 250;
const LEFT = 40;
const BOTTOM = 24;
const TOP = 10;
const LABEL_EVERY = 6;

type Props = { title: string; weeks: readonly ComparedWeek[]; planIndex: number; topStems: number };

/**
 * Focal stems week by week under one plan: within reach as a pale ground, needed as a bar, its short part hatched. `topStems` is the top of
 * the scale, the same for every picture that stands beside it. A picture only: the numbers stand in the table below.
 */
export function FocalChart({ title, weeks, planIndex, topStems }: Props) {
  const step = (WIDTH - LEFT - 6) / Math.max(1, weeks.length);
  const y = (stems: number) => TOP + (HEIGHT - BOTTOM - TOP) * (1 - Math.min(stems, topStems) / topStems);
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
        <defs>
          <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <rect width="7" height="7" className="hatch-ground" />
            <line x1="0" y1="0" x2="0" y2="7" className="hatch-line" />
          </pattern>
        </defs>
        {[0, 0.5, 1].map((share) => (
          <g key={share}>
            <line className="axis" x1={LEFT} x2={WIDTH - 4} y1={y(topStems * share)} y2={y(topStems * share)} />
            <text x={LEFT - 5} y={y(topStems * share) + 4} textAnchor="end">
              {inWholes(topStems * share)}
            </text>
          </g>
        ))}
        {weeks.map(({ week, monday, focal }, index) => {
          const x = LEFT + index * step;
          return (
            <g key={week}>
              <WeekBar role={focal[planIndex]} x={x + 1} wide={Math.max(2, step - 2)} y={y} hatch={hatch} />
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

type BarProps = { role: WeekRole; x: number; wide: number; y: (stems: number) => number; hatch: string };

function WeekBar({ role: { reachableStems, coveredStems, needStems, shortStems }, x, wide, y, hatch }: BarProps) {
  const bar = { x: x + wide * 0.15, width: wide * 0.7 };
  return (
    <>
      <rect className="reach" x={x} width={wide} y={y(reachableStems)} height={y(0) - y(reachableStems)} />
      <rect className="covered" {...bar} y={y(coveredStems)} height={y(0) - y(coveredStems)} />
      {shortStems > 0 && (
        <rect
          className="short-bar"
          fill={`url(#${hatch})`}
          {...bar}
          y={y(needStems)}
          height={y(coveredStems) - y(needStems)}
        />
      )}
    </>
  );
}
