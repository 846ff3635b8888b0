import { type ChangedCrop, takenFigures, withFigures } from "#lib/domain/built-in-figures";
import type { ChangedRecipe } from "#lib/domain/built-in-recipes";
import { type Forecast, forecast, frostDayOf, ORDINARY_YEAR } from "#lib/plan/road/forecast";
import { stemsShort } from "#lib/plan/road/gaps";
import { type Plan, plan } from "#lib/plan/road/plan";
import { meetingSeasons } from "#lib/plan/road/seasons";
import type { PointsDone } from "#lib/plan/winter/keep-curve";

/** Stems of a season that go short, and those of one crop that are cut. */
type FigureOutcome = { readonly shortStems: number; readonly cutStems: number };

/** What taking the built-in figures of a crop would do to a season. */
export type CropOutcome = {
  readonly changed: ChangedCrop;
  readonly before: FigureOutcome;
  readonly after: FigureOutcome;
};

/** What taking the built-in recipes would do to a season, all of them at once. */
type RecipesOutcome = {
  readonly changed: readonly ChangedRecipe[];
  readonly shortBefore: number;
  readonly shortAfter: number;
};

/** What taking built-in figures does to a season: crop by crop, each by itself, the recipes together, and all of it at once [W9]. */
export type FiguresOutcome = {
  readonly crops: readonly CropOutcome[];
  /** Null when none has changed, or it was stopped before. */
  readonly recipes: RecipesOutcome | null;
  readonly shortBefore: number;
  /** Null when it was stopped before. */
  readonly shortAfterAll: number | null;
};

/**
 * Plans the season with the figures of each crop taken by itself, with the recipes, and with all of them. The farm is not touched. Yields after each plan
 * how many are made; sent `true`, it ends with those.
 */
export function* figuresTakenSteps(
  before: Plan,
  changed: readonly ChangedCrop[],
  recipes: readonly ChangedRecipe[] = [],
): Generator<PointsDone, FiguresOutcome, boolean | undefined> {
  const shortBefore = stemsShort(before.gaps);
  const forecasts = forecastsOf(before);
  const ofCount = changed.length + Math.min(1, recipes.length) + 1;
  const crops: CropOutcome[] = [];
  const soFar = { shortBefore, shortAfterAll: null, recipes: null, crops };
  for (const one of changed) {
    const after = canMove(before, forecasts, one) ? planWith(before, [one]) : before;
    crops.push({
      changed: one,
      before: { shortStems: shortBefore, cutStems: cutStemsOf(before, one.crop.id) },
      after: { shortStems: stemsShort(after.gaps), cutStems: cutStemsOf(after, one.crop.id) },
    });
    if (yield { doneCount: crops.length, ofCount }) return soFar;
  }
  const shortAfter = stemsShort(recipes.length === 0 ? before.gaps : planWith(before, [], recipes).gaps);
  const ofRecipes = recipes.length === 0 ? null : { changed: recipes, shortBefore, shortAfter };
  if (yield { doneCount: ofCount - 1, ofCount }) return { ...soFar, recipes: ofRecipes };
  return {
    shortBefore,
    // What is offered alone is all that is offered: its own plan says it already.
    shortAfterAll:
      ofCount === 2 ? (crops[0]?.after.shortStems ?? shortAfter) : stemsShort(planWith(before, changed, recipes).gaps),
    recipes: ofRecipes,
    crops,
  };
}

/**
 * Whether figures of a crop can move a plan: its price or when it is to be had, which others are measured by, or how its stems are held is among them, some planting is
 * cut otherwise, or other seasons meet the plan's [M8]. Forecasting is a fraction of matching, and a clock on a farm without a climate moves
 * nothing.
 */
function canMove(before: Plan, forecasts: readonly SeasonForecast[], changed: ChangedCrop): boolean {
  if (changed.figures.some(({ of }) => of === "number" || of === "trade" || of === "traits")) return true;
  const taken = withFigures(before.snapshot, takenFigures([changed]));
  if (meetingSeasons(taken, before.seasonYear).join() !== before.meetingSeasons.join()) return true;
  return forecasts.some(({ season, frostDay, was }) => {
    const { plantings } = forecast(taken, season, frostDay, ORDINARY_YEAR, was);
    return was.plantings.some(
      ({ cutDays, cutStems }, index) =>
        !isSameList(cutDays, plantings[index].cutDays) || !isSameList(cutStems, plantings[index].cutStems),
    );
  });
}

type SeasonForecast = { readonly season: number; readonly frostDay: number; readonly was: Forecast };

/** The forecasts of all seasons that meet in a plan. */
const forecastsOf = ({ snapshot, seasonYear, meetingSeasons, frostDay, forecast: own }: Plan): SeasonForecast[] =>
  meetingSeasons.map((season) =>
    season === seasonYear
      ? { season, frostDay, was: own }
      : { season, frostDay: frostDayOf(snapshot.farm, season), was: forecast(snapshot, season) },
  );

const isSameList = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((one, index) => one === b[index]);

const planWith = (before: Plan, changed: readonly ChangedCrop[], recipes: readonly ChangedRecipe[] = []): Plan => {
  const { snapshot, seasonYear, today } = before;
  return plan(withFigures(snapshot, takenFigures(changed, recipes)), seasonYear, undefined, before, today);
};

const cutStemsOf = ({ forecast }: Plan, cropId: number): number =>
  forecast.plantings
    .filter(({ crop }) => crop.id === cropId)
    .reduce((sum, { cutStems }) => sum + cutStems.reduce((all, stems) => all + stems, 0), 0);
