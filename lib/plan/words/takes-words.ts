import { MEASURES } from "#lib/domain/measures";
import type { Units } from "#lib/domain/words";
import type { WinterTask } from "#lib/plan/winter/spread-work";
import { countOf, inTenths, inWholes } from "./numbers";

/** What a piece of winter work uses up. */
type Takes = Pick<WinterTask, "clumpCount" | "leafCubicMetres" | "tarpSquareMetres">;

export const sumOfTakes = (tasks: readonly Takes[]): Takes => ({
  clumpCount: tasks.reduce((sum, task) => sum + task.clumpCount, 0),
  leafCubicMetres: tasks.reduce((sum, task) => sum + task.leafCubicMetres, 0),
  tarpSquareMetres: tasks.reduce((sum, task) => sum + task.tarpSquareMetres, 0),
});

/** "80 clumps, 4.7 cubic yards of leaves"; empty when it takes nothing. */
export function takesInWords({ clumpCount, leafCubicMetres, tarpSquareMetres }: Takes, units: Units): string {
  const { volume, area } = MEASURES[units];
  return [
    clumpCount > 0 && countOf(clumpCount, "clump"),
    leafCubicMetres > 0 && `${inTenths(leafCubicMetres * volume.shownPerStored)} ${volume.word} of leaves`,
    tarpSquareMetres > 0 && `${inWholes(tarpSquareMetres * area.shownPerStored)} ${area.word} of tarp`,
  ]
    .filter((part) => part !== false)
    .join(", ");
}
