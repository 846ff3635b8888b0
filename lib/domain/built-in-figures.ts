import { type ChangedRecipe, keptRecipes, takenRecipes } from "./built-in-recipes";
import type { CatalogueCrop, CatalogueCurve } from "./catalogue-types";
import { CROP_NUMBERS, type Crop } from "./records/crop";
import type { BloomCurve } from "./records/curve";
import { unlearned } from "./records/learned";
import type { Recipe } from "./records/recipe";
import type { Snapshot } from "./snapshot";
import { OWN, type Sourced } from "./sourced";

/** A number of a crop that carries its origin. */
type CropNumber = keyof typeof CROP_NUMBERS;

/** A figure of the farm that came with the tool and stands otherwise in its list of crops today. Of a curve, timing and yield are a figure each. */
export type ChangedFigure =
  | { readonly of: "number"; readonly name: CropNumber; readonly was: Sourced; readonly is: Sourced }
  | { readonly of: "trade"; readonly was: Crop; readonly is: CatalogueCrop }
  | { readonly of: "traits"; readonly was: Crop; readonly is: CatalogueCrop }
  | { readonly of: "timing" | "yield"; readonly was: BloomCurve; readonly is: CatalogueCurve };

/** All such figures of one crop of the farm. */
export type ChangedCrop = { readonly crop: Crop; readonly figures: readonly ChangedFigure[] };

/** Rows that take the place of the farm's. */
export type FigureRows = {
  readonly crops: readonly Crop[];
  readonly curves: readonly BloomCurve[];
  readonly recipes: readonly Recipe[];
};

/**
 * Where the built-in crops say something else than the farm has of them. A crop is known by its name, a curve by its treatment; curves of
 * one variety or planting and crops that are not built in are the grower's. A figure marked as her own is never among them: it changes only by her hand. Only numbers
 * count, a new source for the same number is no change. A built-in curve that the farm lacks is no change: see `missing-curves.ts`.
 */
export function changedFigures(
  { crops, curves }: Pick<Snapshot, "crops" | "curves">,
  catalogue: readonly CatalogueCrop[],
): ChangedCrop[] {
  const builtIn = new Map(catalogue.map((crop) => [crop.name, crop]));
  return crops.flatMap((crop) => {
    const now = builtIn.get(crop.name);
    if (!now) return [];
    const ofCrop = curves.filter((row) => row.cropId === crop.id && row.varietyId === null && row.plantingId === null);
    const figures = [
      ...changedNumbers(crop, now),
      ...changedTrade(crop, now),
      ...changedTraits(crop, now),
      ...ofCrop.flatMap((curve) => changedParts(curve, now)),
    ];
    return figures.length > 0 ? [{ crop, figures }] : [];
  });
}

const changedNumbers = (crop: Crop, now: CatalogueCrop): ChangedFigure[] =>
  Object.keys(CROP_NUMBERS).flatMap((key) => {
    const name = key as CropNumber;
    return crop[name].mark === OWN.mark || crop[name].count === now[name].count
      ? []
      : [{ of: "number" as const, name, was: crop[name], is: now[name] }];
  });

/** When and in what colours the crop is to be had. */
const changedTrade = (was: Crop, is: CatalogueCrop): ChangedFigure[] =>
  was.tradeOrigin.mark === OWN.mark || isSameTrade(was, is) ? [] : [{ of: "trade", was, is }];

/** What its stem is like. */
const changedTraits = (was: Crop, is: CatalogueCrop): ChangedFigure[] =>
  was.traitsOrigin.mark === OWN.mark || isSameTraits(was, is) ? [] : [{ of: "traits", was, is }];

function changedParts(was: BloomCurve, now: CatalogueCrop): ChangedFigure[] {
  const is = now.curves.find(({ treatment }) => treatment === was.treatment);
  if (!is) return [];
  const parts = [
    { of: "timing", isOwn: isOwnTiming(was), ofCurve: timingOf },
    { of: "yield", isOwn: was.yieldOrigin.mark === OWN.mark, ofCurve: yieldOf },
  ] as const;
  return parts.flatMap(({ of, isOwn, ofCurve }) =>
    isOwn || isAlike(ofCurve(was), ofCurve(is)) ? [] : [{ of, was, is }],
  );
}

/** The first cut, or the clock that tells it, is the grower's own. */
const isOwnTiming = ({ timingOrigin, heatBaseC, heatOrigin }: BloomCurve): boolean =>
  timingOrigin.mark === OWN.mark || (heatBaseC !== null && heatOrigin.mark === OWN.mark);

/** The numbers that a yield is made of. */
const yieldOf = ({
  stemsPerPlantByWeek,
  yieldSpread,
  shareByAge,
  lateLossShare,
  saleableBySeason,
}: YieldNumbers): YieldNumbers => ({
  stemsPerPlantByWeek,
  yieldSpread,
  shareByAge,
  lateLossShare,
  saleableBySeason,
});

type YieldNumbers = Pick<
  CatalogueCurve,
  "stemsPerPlantByWeek" | "yieldSpread" | "shareByAge" | "lateLossShare" | "saleableBySeason"
>;

/** All other numbers of a curve: when it blooms. What a later version adds to a curve is among them by itself. */
function timingOf(curve: CatalogueCurve & Partial<BloomCurve>): object {
  const {
    id: _,
    cropId: _crop,
    varietyId: _variety,
    plantingId: _planting,
    treatment: _treatment,
    note: _note,
    learned: _learned,
    ...numbers
  } = curve;
  const ofYield = new Set(Object.keys(yieldOf(curve)));
  return Object.fromEntries(Object.entries(numbers).filter(([name]) => !name.endsWith("Origin") && !ofYield.has(name)));
}

/** Whether two crops are to be had in the same months and colours, in whatever order they are named. */
export const isSameTrade = (a: TradeSeasons, b: TradeSeasons): boolean =>
  isAlike(a.buyInMonths.toSorted(), b.buyInMonths.toSorted()) &&
  isAlike(a.buyInColours.toSorted(), b.buyInColours.toSorted());

type TradeSeasons = Pick<Crop, "buyInMonths" | "buyInColours">;

/** Whether two crops have the same head, stem and way out of water. */
export const isSameTraits = (a: Traits, b: Traits): boolean =>
  a.headSize === b.headSize && a.stemLength === b.stemLength && a.outOfWater === b.outOfWater;

type Traits = Pick<Crop, "headSize" | "stemLength" | "outOfWater">;

/** Plain data that says the same, in whatever order its fields stand. */
function isAlike(a: unknown, b: unknown): boolean {
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return a === b;
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].every((name) => isAlike(Reflect.get(a, name), Reflect.get(b, name)));
}

/** The farm's rows with the built-in figures in place of its own former ones. */
export const takenFigures = (changed: readonly ChangedCrop[], recipes: readonly ChangedRecipe[] = []): FigureRows =>
  rowsWith(changed, takenRecipes(recipes), {
    number: (figure) => figure.is,
    crop: tradeOrTraits,
    curve: (row, figure) => {
      if (figure.of === "yield") {
        const { yieldOrigin, note } = figure.is;
        const learned = unlearned(row.learned, "yieldFactor");
        return { ...row, ...yieldOf(figure.is), learned, yieldOrigin, note };
      }
      const learned = unlearned(row.learned, "laterDays");
      return { ...row, ...figure.is, ...yieldOf(row), learned, yieldOrigin: row.yieldOrigin };
    },
  });

function tradeOrTraits({ of, is }: CropFigure): Partial<Crop> {
  const { buyInColours, buyInMonths, tradeOrigin, headSize, stemLength, outOfWater, traitsOrigin } = is;
  return of === "trade"
    ? { buyInColours, buyInMonths, tradeOrigin }
    : { headSize, stemLength, outOfWater, traitsOrigin };
}

/** The farm's rows with these figures kept as they are and marked as the grower's own, so that no later version offers to change them. */
export const keptFigures = (changed: readonly ChangedCrop[], recipes: readonly ChangedRecipe[] = []): FigureRows =>
  rowsWith(changed, keptRecipes(recipes), {
    number: (figure) => ({ ...figure.was, ...OWN }),
    crop: ({ of }) => ({ [`${of}Origin`]: OWN }),
    curve: (row, figure) => ({ ...row, [`${figure.of}Origin`]: OWN }),
  });

type NumberFigure = Extract<ChangedFigure, { of: "number" }>;
type CropFigure = Extract<ChangedFigure, { of: "trade" | "traits" }>;
type CurveFigure = Exclude<ChangedFigure, NumberFigure | CropFigure>;
type Settled = {
  readonly number: (figure: NumberFigure) => Sourced;
  readonly crop: (figure: CropFigure) => Partial<Crop>;
  readonly curve: (row: BloomCurve, figure: CurveFigure) => BloomCurve;
};

function rowsWith(changed: readonly ChangedCrop[], recipes: readonly Recipe[], settled: Settled): FigureRows {
  const crops: Crop[] = [];
  const curves = new Map<number, BloomCurve>();
  for (const { crop, figures } of changed) {
    let row = crop;
    for (const figure of figures)
      if (figure.of === "number") row = { ...row, [figure.name]: settled.number(figure) };
      else if (figure.of === "trade" || figure.of === "traits") row = { ...row, ...settled.crop(figure) };
      else curves.set(figure.was.id, settled.curve(curves.get(figure.was.id) ?? figure.was, figure));
    if (row !== crop) crops.push(row);
  }
  return { crops, curves: [...curves.values()], recipes };
}

/** The farm with rows in place of those of the same id. Rows that stay are the same objects. */
export function withFigures(snapshot: Snapshot, { crops, curves, recipes }: FigureRows): Snapshot {
  const replaced = <Row extends { readonly id: number }>(rows: readonly Row[], by: readonly Row[]): readonly Row[] => {
    const fresh = new Map(by.map((row) => [row.id, row]));
    return by.length === 0 ? rows : rows.map((row) => fresh.get(row.id) ?? row);
  };
  return {
    ...snapshot,
    crops: replaced(snapshot.crops, crops),
    curves: replaced(snapshot.curves, curves),
    recipes: replaced(snapshot.recipes, recipes),
  };
}
