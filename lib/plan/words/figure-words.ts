import type { ChangedFigure } from "#lib/domain/built-in-figures";
import type { CatalogueCurve } from "#lib/domain/catalogue-types";
import { monthDayInShort } from "#lib/domain/day";
import { measureIn, shown } from "#lib/domain/measures";
import { BLOOM_END } from "#lib/domain/records/bloom-end";
import { CROP_NUMBERS } from "#lib/domain/records/crop";
import { type Manner, valueInWords } from "#lib/domain/records/form";
import type { Origin } from "#lib/domain/sourced";
import { TREATMENT_WORDS, type Units } from "#lib/domain/words";
import { clockInWords } from "./clock-words";
import { countOf, inPercent, inTenths } from "./numbers";
import { tradeInWords } from "./trade-words";
import { traitsInWords } from "./trait-words";
import { bySeasonInWords } from "./why-words";

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
  if (figure.of === "trade")
    return {
      name: "To be had from others",
      was: tradeInWords(figure.was),
      is: tradeInWords(figure.is),
      wasFrom: figure.was.tradeOrigin,
      isFrom: figure.is.tradeOrigin,
    };
  if (figure.of === "traits")
    return {
      name: "Its stem",
      was: traitsInWords(figure.was),
      is: traitsInWords(figure.is),
      wasFrom: figure.was.traitsOrigin,
      isFrom: figure.is.traitsOrigin,
    };
  const { was, is } = figure;
  const grown = TREATMENT_WORDS[was.treatment];
  return figure.of === "timing"
    ? {
        name: `First cut, ${grown}`,
        was: timing(was, is, manner.units),
        is: timing(is, was, manner.units),
        wasFrom: was.timingOrigin,
        isFrom: is.timingOrigin,
      }
    : {
        name: `Stems, ${grown}`,
        was: stems(was, is),
        is: stems(is, was),
        wasFrom: was.yieldOrigin,
        isFrom: is.yieldOrigin,
      };
}

/** The first cut, and of what tells it and of what ends the bloom only what differs from the other. */
function timing(curve: CatalogueCurve, other: CatalogueCurve, units: Units): string {
  const { anchor, firstCutSpreadDays } = curve;
  const first =
    anchor.kind === "day-of-year" ? monthDayInShort(anchor.firstCut) : `${countOf(anchor.days, "day")} after planting`;
  const clock = clockInWords(curve, units);
  const sentences = [
    `${first}, give or take ${countOf(firstCutSpreadDays, "day")}.`,
    curve.sowingDays !== other.sowingDays &&
      (curve.sowingDays === null
        ? "Sown in place it counts the same."
        : `Sown in place, ${countOf(curve.sowingDays, "day")} more.`),
    curve.laterDays !== other.laterDays && `Moved by ${countOf(curve.laterDays, "day")}.`,
    clock !== clockInWords(other, units) && (clock ?? "The calendar tells it."),
    endInWords(curve, units) !== endInWords(other, units) && endInWords(curve, units),
  ];
  return sentences.filter(Boolean).join(" ");
}

function endInWords({ ends, endHighC }: CatalogueCurve, units: Units): string {
  const what = BLOOM_END.ends.meanings?.[ends] ?? ends;
  const measure = measureIn(units, "temperature");
  const heat = endHighC === null ? "" : `, at a usual high of ${shown(measure, endHighC)} ${measure.word}`;
  return `It ends with ${what}${heat}.`;
}

/** The stems of a grown plant by week, and what its age and a late planting make of them where that differs from the other. */
function stems(curve: CatalogueCurve, other: CatalogueCurve): string {
  const { stemsPerPlantByWeek, yieldSpread } = curve;
  const total = stemsPerPlantByWeek.reduce((sum, ofWeek) => sum + ofWeek, 0);
  const weeks = stemsPerPlantByWeek.map(inTenths).join(", ");
  const grown = `${inTenths(total)} a plant in ${countOf(stemsPerPlantByWeek.length, "week")} (${weeks}), give or take ${inPercent(yieldSpread)}.`;
  return [
    grown,
    ...[ageInWords, lateInWords, saleableInWords]
      .filter((says) => says(curve) !== says(other))
      .map((says) => says(curve)),
  ].join(" ");
}

const ageInWords = ({ shareByAge }: CatalogueCurve): string =>
  shareByAge.length === 0
    ? "The same at any age."
    : `Of that in each season of its life: ${shareByAge.map(inPercent).join(", ")}, and so on.`;

const saleableInWords = ({ saleableBySeason }: CatalogueCurve): string =>
  saleableBySeason.length === 0
    ? "All that is cut is fit to sell."
    : `Fit to sell of them: ${bySeasonInWords(saleableBySeason)}.`;

const lateInWords = ({ lateLossShare }: CatalogueCurve): string =>
  lateLossShare === null
    ? "As many whenever planted."
    : `${inPercent(lateLossShare)} fewer for each week planted late.`;
