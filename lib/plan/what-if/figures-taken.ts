import { type ChangedCrop, takenFigures, withFigures } from "#lib/domain/built-in-figures";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Plan, plan } from "#lib/plan/road/plan";

/** Stems of a season that go short, and those of one crop that are cut. */
type FigureOutcome = { readonly shortStems: number; readonly cutStems: number };

/** What taking the built-in figures of a crop would do to a season. */
export type CropOutcome = {
  readonly changed: ChangedCrop;
  readonly before: FigureOutcome;
  readonly after: FigureOutcome;
};

/** What taking built-in figures does to a season: crop by crop, each by itself, and all of them together [W9]. */
export type FiguresOutcome = {
  readonly crops: readonly CropOutcome[];
  readonly shortBefore: number;
  readonly shortAfterAll: number;
};

/** Plans the season with the figures of each crop taken by itself, and with all of them. The farm is not touched. */
export function figuresTaken(before: Plan, changed: readonly ChangedCrop[]): FiguresOutcome {
  const shortBefore = shortStemsOf(before);
  return {
    shortBefore,
    shortAfterAll: shortStemsOf(planWith(before, changed)),
    crops: changed.map((one) => {
      const after = canMove(before.snapshot, one) ? planWith(before, [one]) : before;
      return {
        changed: one,
        before: { shortStems: shortBefore, cutStems: cutStemsOf(before, one.crop.id) },
        after: { shortStems: shortStemsOf(after), cutStems: cutStemsOf(after, one.crop.id) },
      };
    }),
  };
}

/** Whether figures of a crop can move a plan: it grows or stands in the cooler, or its price, which others are measured by, is among them. */
function canMove({ varieties, plantings, coolerStock }: Snapshot, { crop, figures }: ChangedCrop): boolean {
  if (figures.some((figure) => figure.of === "number" && figure.name === "buyInCents")) return true;
  const ofCrop = new Set(varieties.filter(({ cropId }) => cropId === crop.id).map(({ id }) => id));
  return [...plantings, ...coolerStock].some(({ varietyId }) => ofCrop.has(varietyId));
}

const planWith = (before: Plan, changed: readonly ChangedCrop[]): Plan =>
  plan(withFigures(before.snapshot, takenFigures(changed)), before.seasonYear, undefined, before);

const shortStemsOf = ({ gaps }: Plan): number => gaps.reduce((sum, { shortStems }) => sum + shortStems, 0);

const cutStemsOf = ({ forecast }: Plan, cropId: number): number =>
  forecast.plantings
    .filter(({ crop }) => crop.id === cropId)
    .reduce((sum, { cutStems }) => sum + cutStems.reduce((all, stems) => all + stems, 0), 0);
