import type { Colour } from "#lib/domain/words";
import { apportion } from "#lib/maths/apportion";
import type { OpenDate } from "#lib/plan/road/open-dates";

/** Stems rounded for saying aloud; the colours sum to the whole. */
export type AboutStems = {
  readonly stems: number;
  readonly byColour: readonly { readonly colour: Colour; readonly stems: number }[];
};

/** Up to so many stems a forecast is said in steps of so many. */
const STEPS = [
  { below: 20, step: 1 },
  { below: 200, step: 5 },
  { below: Number.POSITIVE_INFINITY, step: 10 },
] as const;

const stepOf = (stems: number): number => STEPS.find(({ below }) => stems < below)?.step ?? 1;

/** A forecast number of stems as it is said aloud. */
export const aboutCount = (stems: number): number => Math.round(stems / stepOf(stems)) * stepOf(stems);

/** What a day has left, in fives or tens: a forecast is not known to the stem. The largest colour comes first; one that rounds to none is left out. */
export function aboutStems({ focalStems, byColour }: Pick<OpenDate, "focalStems" | "byColour">): AboutStems {
  const step = stepOf(focalStems);
  const parts = apportion(
    Math.round(focalStems / step),
    byColour.map(({ stems }) => stems),
  );
  const rounded = byColour.map(({ colour }, index) => ({ colour, stems: parts[index] * step }));
  return {
    stems: aboutCount(focalStems),
    byColour: rounded.filter(({ stems }) => stems > 0).sort((a, b) => b.stems - a.stems),
  };
}
