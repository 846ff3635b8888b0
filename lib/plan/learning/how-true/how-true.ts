import { dayInYear, mondayNumber, toDayNumber } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { Snapshot } from "#lib/domain/snapshot";
import { type ComparedFirstCut, type ComparedPicking, truthOf } from "./compared";
import { forecastOfThen } from "./forecast-of-then";
import { saidBy } from "./said-by";
import { type HowTrue, MADE, type Made, SPRING_DAY, type Truth, WINTER_DAY } from "./truth";
import { type FirstCutCame, type PickingCame, type WhatCame, whatCame } from "./what-came";
import { recordedBefore, type WinterBefore, winterBefore } from "./winters-before";

/** A week is looked at so many days before its Monday. */
const DAYS_AHEAD = 28;

/** How many of the forecasts are worked out. */
export type ForecastsDone = { readonly doneCount: number; readonly ofCount: number };

/**
 * How true the forecasts of a season were, made in winter, in spring and four weeks ahead, crop by crop [HT1] to [HT5]. Each is worked out again from what was recorded by its
 * day. Yields after each how many are done; sent `true` it ends with null.
 */
export function* howTrueSteps(
  snapshot: Snapshot,
  seasonYear: number,
): Generator<ForecastsDone, HowTrue | null, boolean | undefined> {
  const came = whatCame(snapshot, seasonYear);
  const asked = askedOf(came, seasonYear);
  const days = [...asked.keys()].sort((a, b) => a - b);
  const before = recordedBefore(snapshot, seasonYear);
  const ofCount = days.length + before.length;
  const firstCuts: Said<ComparedFirstCut>[] = [];
  const pickings: Said<ComparedPicking>[] = [];
  for (const [index, day] of days.entries()) {
    const said = saidBy(forecastOfThen(snapshot, seasonYear, day));
    for (const { made, firstCut, picking } of asked.get(day) ?? []) {
      const saidDay = firstCut ? said.firstCutOf(firstCut) : null;
      if (firstCut && saidDay !== null) firstCuts.push({ made, crop: firstCut.crop, cameDay: firstCut.day, saidDay });
      if (picking) pickings.push({ made, crop: picking.crop, ...said.stemsOf(picking) });
    }
    if (yield { doneCount: index + 1, ofCount }) return null;
  }
  const winters: WinterBefore[] = [];
  for (const [index, season] of before.entries()) {
    winters.push(winterBefore(snapshot, season));
    if (yield { doneCount: days.length + index + 1, ofCount }) return null;
  }
  return summedUp(seasonYear, came, { firstCuts, pickings, winters });
}

type Said<Of> = Of & { readonly made: Made; readonly crop: Crop };
type Asked = { readonly made: Made; readonly firstCut?: FirstCutCame; readonly picking?: PickingCame };

/** What each forecast is asked, by the day on which it was made: nothing of days before it. */
function askedOf({ firstCuts, pickings }: WhatCame, seasonYear: number): Map<number, Asked[]> {
  const asked = new Map<number, Asked[]>();
  const ask = (day: number, of: Omit<Asked, "made">) => {
    for (const made of MADE) {
      const madeOn = madeOnDay(made, seasonYear, day);
      if (madeOn > day) continue;
      const ofDay = asked.get(madeOn) ?? [];
      asked.set(madeOn, ofDay);
      ofDay.push({ made, ...of });
    }
  };
  for (const firstCut of firstCuts) ask(firstCut.day, { firstCut });
  for (const picking of pickings) ask(picking.day, { picking });
  return asked;
}

/** The day number on which a forecast was made that is asked of a day. */
function madeOnDay(made: Made, seasonYear: number, day: number): number {
  if (made === "four weeks ahead") return mondayNumber(day) - DAYS_AHEAD;
  return toDayNumber(dayInYear(made === "winter" ? WINTER_DAY : SPRING_DAY, seasonYear));
}

type Compared = {
  readonly firstCuts: readonly Said<ComparedFirstCut>[];
  readonly pickings: readonly Said<ComparedPicking>[];
  readonly winters: readonly WinterBefore[];
};

function summedUp(seasonYear: number, { rows }: WhatCame, { firstCuts, pickings, winters }: Compared): HowTrue {
  const truthBy = (isOf: (crop: Crop) => boolean) => {
    const truthOfMade = (made: Made): Truth =>
      truthOf(
        firstCuts.filter((one) => one.made === made && isOf(one.crop)),
        pickings.filter((one) => one.made === made && isOf(one.crop)),
      );
    return {
      plantingCount: rows.filter(({ crop }) => isOf(crop)).length,
      said: {
        winter: truthOfMade("winter"),
        spring: truthOfMade("spring"),
        "four weeks ahead": truthOfMade("four weeks ahead"),
      },
    };
  };
  const crops = [...new Map([...firstCuts, ...pickings].map(({ crop: { id, name } }) => [id, { id, name }])).values()];
  return {
    seasonYear,
    crops: crops
      .sort((a, b) => (a.name < b.name ? -1 : 1))
      .map((crop) => ({
        crop,
        ...truthBy(({ id }) => id === crop.id),
        wintersBefore: winters.flatMap(({ season, daysLateOf }) => {
          const daysLate = daysLateOf.get(crop.id);
          return daysLate === undefined ? [] : [{ season, daysLate }];
        }),
      })),
    all: truthBy(() => true),
  };
}
