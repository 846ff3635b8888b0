import type { Colour } from "#lib/domain/words";
import { apportion } from "#lib/maths/apportion";
import type { OpenDate } from "#lib/plan/open-dates";

/** Stems rounded for saying aloud; the colours sum to the whole. */
export type AboutStems = {
  readonly stems: number;
  readonly byColour: readonly { readonly colour: Colour; readonly stems: number }[];
};

/** Fewer than this are said to the stem. */
const EXACT_BELOW = 20;
const TENS = 10;

/** What a day has left, in tens: a forecast is not known to the stem. The largest colour comes first; one that rounds to none is left out. */
export function aboutStems({ focalStems, byColour }: Pick<OpenDate, "focalStems" | "byColour">): AboutStems {
  const step = focalStems < EXACT_BELOW ? 1 : TENS;
  const parts = apportion(
    Math.round(focalStems / step),
    byColour.map(({ stems }) => stems),
  );
  const rounded = byColour.map(({ colour }, index) => ({ colour, stems: parts[index] * step }));
  return {
    stems: Math.round(focalStems / step) * step,
    byColour: rounded.filter(({ stems }) => stems > 0).sort((a, b) => b.stems - a.stems),
  };
}
