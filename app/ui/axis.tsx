import { nice, ticks } from "d3-array";
import { inWholes } from "#lib/plan/words/numbers";

/** A scale of counts from the floor of a picture to its top. */
export type Axis = {
  /** The round count at the top. */
  readonly top: number;
  readonly ticks: readonly number[];
  /** The height of a count in the picture; what lies above the top is cut off there. */
  readonly y: (count: number) => number;
  readonly height: number;
};

type Place = { readonly topAt: number; readonly floorAt: number; readonly tickCount: number };

/** The axis on which `mostCount` is the highest that must show, between two heights of a picture, with about `tickCount` round ticks. */
export function axisTo(mostCount: number, { topAt, floorAt, tickCount }: Place): Axis {
  const [, top] = nice(0, Math.max(10, mostCount), tickCount);
  return {
    top,
    ticks: ticks(0, top, tickCount),
    y: (count) => floorAt - (floorAt - topAt) * (Math.min(count, top) / top),
    height: floorAt - topAt,
  };
}

/** Room left of the plot for the numbers of its axis. */
export const AXIS_WIDTH = 40;

/** The lines of an axis over the width of a picture, with their counts. */
export const AxisLines = ({ axis, width }: { axis: Axis; width: number }) =>
  axis.ticks.map((count) => (
    <g key={count}>
      <line className="axis" x1={AXIS_WIDTH} x2={width - 4} y1={axis.y(count)} y2={axis.y(count)} />
      <text x={AXIS_WIDTH - 5} y={axis.y(count) + 4} textAnchor="end">
        {inWholes(count)}
      </text>
    </g>
  ));
