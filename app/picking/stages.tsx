import type { ReactNode } from "react";
import type { Crop } from "#lib/domain/records/crop";
import type { PickDay } from "#lib/plan/road/pick-sheets";
import { letter } from "./tie";

/** The crops of some picking days, and the letter under which each has its note at the foot. */
export function stagesOf(days: readonly PickDay[]) {
  const crops = [...new Set(days.flatMap(({ lines }) => lines.map(({ crop }) => crop)))];
  return { crops, noteOf: new Map(crops.map((crop, index) => [crop.id, letter(index)])) };
}

type Props = {
  readonly crops: readonly Crop[];
  readonly noteOf: ReadonlyMap<number, string>;
  readonly children: ReactNode;
};

/** The stage to cut each crop at, in lettered notes at the foot, and what the columns mean. */
export const Stages = ({ crops, noteOf, children }: Props) => (
  <p className="paper-notes">
    {crops.map((crop) => (
      <span key={crop.id}>
        <sup>{noteOf.get(crop.id)}</sup> {crop.cutStage};{" "}
      </span>
    ))}
    {children}
  </p>
);
