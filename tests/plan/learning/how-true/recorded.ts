import { toDay } from "#lib/domain/day";
import type { BudLook } from "#lib/domain/records/bud-look";
import type { Cut } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { howTrueSteps } from "#lib/plan/learning/how-true/how-true";
import type { HowTrue } from "#lib/plan/learning/how-true/truth";
import type { Forecast } from "#lib/plan/road/forecast";
import { day } from "../../../small-farm";

/** How true the forecasts of a season were, all of them worked out. */
export function howTrue(snapshot: Snapshot, seasonYear = 2027): HowTrue {
  const steps = howTrueSteps(snapshot, seasonYear);
  let step = steps.next();
  while (!step.done) step = steps.next();
  if (step.value === null) throw new Error("it was stopped");
  return step.value;
}

/** A cut of all that was ready, of one bed and variety, for nobody. */
export const cut = (cutOn: string, stemsCut: number, given: Partial<Cut> = {}): Omit<Cut, "id"> => ({
  ...{ cutOn: day(cutOn), bedId: 1, varietyId: 1, bookingId: null },
  ...{ stemsCut, stemsAsked: null, goodStems: null, restStands: false },
  ...given,
});

/** A look at the buds of one bed. */
export const look = (lookedOn: string, sign: BudLook["sign"], given: Partial<BudLook> = {}): Omit<BudLook, "id"> => ({
  ...{ lookedOn: day(lookedOn), bedId: 1, varietyId: 1, sign, daysToCut: null },
  ...given,
});

/** The rows, each with an id. */
export const numbered = <T>(rows: readonly T[]): (T & { id: number })[] =>
  rows.map((row, index) => ({ ...row, id: index + 1 }));

/** A season that came just as this forecast: a first bloom in each bed on its day, and good stems of each picking day as `askedOf` says. */
export function cameAs(
  { plantings }: Forecast,
  askedOf: (stems: number) => Pick<Cut, "stemsCut" | "stemsAsked">,
): Pick<Snapshot, "cuts" | "budLooks"> {
  const bloomed = plantings.filter(({ firstCut, openedStems }) => firstCut !== null && openedStems > 0);
  return {
    budLooks: numbered(
      bloomed.map(({ planting: { bedId, varietyId }, firstCut }) =>
        look(toDay(firstCut ?? 0), "first bloom", { bedId, varietyId }),
      ),
    ),
    cuts: numbered(
      bloomed.flatMap(({ planting: { bedId, varietyId }, cutDays, cutStems }) =>
        cutDays.map((on, at) => {
          const { stemsCut, stemsAsked } = askedOf(cutStems[at]);
          return cut(toDay(on), stemsCut, { bedId, varietyId, stemsAsked, goodStems: stemsCut });
        }),
      ),
    ),
  };
}
