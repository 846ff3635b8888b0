import { toDay, yearOf } from "#lib/domain/day";
import type { Problem } from "#lib/domain/problem";
import { calendarDay } from "#lib/plan/road/first-cut";
import type { Grown } from "#lib/plan/road/grown";

/** Why a planting is forecast at nothing, and how to mend it [F7]. */
export const barrenInWords = (row: Grown): Problem => ({
  place: `bed ${row.bed.name}, ${row.crop.name} ${row.variety.name}`,
  message: reasonOf(row),
});

function reasonOf({ planting, curve, heatEnd }: Grown): string {
  const { treatment, plantedOn, seasonYear } = planting;
  if (!curve)
    return `no bloom curve for "${treatment}": it is forecast at 0 stems. Add a curve for it, or change the treatment.`;
  const mend = "it is forecast at 0 stems. Mend the planting day or the season.";
  if (heatEnd !== null)
    return `planted on ${plantedOn} it would be cut from ${toDay(heatEnd)}, when days are usually too hot for it: ${mend}`;
  const onPaper = toDay(calendarDay(curve, planting));
  return Math.abs(yearOf(onPaper) - seasonYear) > 1
    ? `planted on ${plantedOn} it would be cut from ${onPaper}, not in ${seasonYear}: ${mend}`
    : `planted on ${plantedOn} it never gathers the warmth that it needs to bloom in ${seasonYear}: ${mend}`;
}
