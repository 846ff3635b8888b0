import type { WeekRole } from "#lib/plan/road/weeks";
import type { Axis } from "../ui/axis";

/** The hatch of what is short, to be named by `id` in one picture. */
export const Hatch = ({ id }: { id: string }) => (
  <defs>
    <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width="7" height="7" className="hatch-ground" />
      <line x1="0" y1="0" x2="0" y2="7" className="hatch-line" />
    </pattern>
  </defs>
);

type Stems = Pick<WeekRole, "needStems" | "coveredStems" | "shortStems" | "reachableStems">;
type Props = { stems: Stems; x: number; width: number; y: Axis["y"]; hatchId: string };

/** One week of a role: within reach as a pale ground, what is asked as a bar on it, its short part hatched. */
export function WeekBar({
  stems: { needStems, coveredStems, shortStems, reachableStems },
  x,
  width,
  y,
  hatchId,
}: Props) {
  const bar = { x: x + width * 0.2, width: width * 0.6 };
  return (
    <>
      <rect className="reach" x={x} width={width} y={y(reachableStems)} height={y(0) - y(reachableStems)} />
      <rect className="covered" {...bar} y={y(coveredStems)} height={y(0) - y(coveredStems)} />
      {shortStems > 0 && (
        <rect
          className="short-bar"
          fill={`url(#${hatchId})`}
          {...bar}
          y={y(needStems)}
          height={y(coveredStems) - y(needStems)}
        />
      )}
    </>
  );
}
