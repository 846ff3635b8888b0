import type { ChangedFigure } from "#lib/domain/built-in-figures";
import type { CatalogueCurve } from "#lib/domain/catalogue-types";
import { monthDayInShort } from "#lib/domain/day";
import { CROP_NUMBERS } from "#lib/domain/records/crop";
import { type Manner, valueInWords } from "#lib/domain/records/form";
import type { Origin } from "#lib/domain/sourced";
import { TREATMENT_WORDS, type Units } from "#lib/domain/words";
import { clockInWords } from "./clock-words";
import { countOf, inPercent, inTenths } from "./numbers";

/** A changed figure as a row says it: what it is, what the farm has, what the tool says today, and where each comes from. */
export type FigureWords = {
  readonly name: string;
  readonly was: string;
  readonly is: string;
  readonly wasFrom: Origin;
  readonly isFrom: Origin;
};

/** Says a changed figure in the farm's units. */
export function figureInWords(figure: ChangedFigure, manner: Manner): FigureWords {
  if (figure.of === "number") {
    const field = CROP_NUMBERS[figure.name];
    const said = (count: number) => valueInWords(field.parts?.count ?? field, count, manner);
    const { was, is } = figure;
    return { name: field.label, was: said(was.count), is: said(is.count), wasFrom: was, isFrom: is };
  }
  const { was, is } = figure;
  const grown = TREATMENT_WORDS[was.treatment];
  return figure.of === "timing"
    ? {
        name: `First cut, ${grown}`,
        was: timing(was, manner.units),
        is: timing(is, manner.units),
        wasFrom: was.timingOrigin,
        isFrom: is.timingOrigin,
      }
    : { name: `Stems, ${grown}`, was: stems(was), is: stems(is), wasFrom: was.yieldOrigin, isFrom: is.yieldOrigin };
}

function timing({ anchor, firstCutSpreadDays, ...clock }: CatalogueCurve, units: Units): string {
  const first =
    anchor.kind === "day-of-year" ? monthDayInShort(anchor.firstCut) : `${countOf(anchor.days, "day")} after planting`;
  const told = `${first}, give or take ${countOf(firstCutSpreadDays, "day")}`;
  const byWarmth = clockInWords({ anchor, ...clock }, units);
  return byWarmth ? `${told}. ${byWarmth}` : told;
}

function stems({ stemsPerPlantByWeek, yieldSpread }: CatalogueCurve): string {
  const total = stemsPerPlantByWeek.reduce((sum, ofWeek) => sum + ofWeek, 0);
  const weeks = stemsPerPlantByWeek.map(inTenths).join(", ");
  return `${inTenths(total)} a plant in ${countOf(stemsPerPlantByWeek.length, "week")} (${weeks}), give or take ${inPercent(yieldSpread)}`;
}
