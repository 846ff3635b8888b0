import { allOf } from "#lib/domain/listed";
import { type CropTruth, type HowTrue, MADE, type Made, type StemsTruth } from "#lib/plan/learning/how-true/truth";
import { countOf, inPercent, inWholes } from "./numbers";

/** "winter said" · "was said four weeks ahead": what a forecast is called where something is held against it. */
const SAID: Readonly<Record<Made, string>> = {
  winter: "winter said",
  spring: "spring said",
  "four weeks ahead": "was said four weeks ahead",
};

/**
 * How true a season's forecasts were, first in days: "Of 186 first cuts eight in ten came within 6 days of what winter said, 5 days of what spring said and 5 days of what was said four
 * weeks ahead." Then in stems. A sentence for each that is known.
 */
export function howTrueLead({ all }: Pick<HowTrue, "all">): string[] {
  const { timing, stems } = all.said["four weeks ahead"];
  return [...(timing ? [datesInWords(all, timing.plantingCount)] : []), ...(stems ? [stemsLead(all, stems)] : [])];
}

function datesInWords({ said }: HowTrue["all"], plantingCount: number): string {
  const within = MADE.flatMap((made) => {
    const { timing } = said[made];
    return timing === null ? [] : [`${countOf(timing.mostDaysOff, "day")} of what ${SAID[made]}`];
  });
  return `Of ${countOf(plantingCount, "first cut")} eight in ten came within ${allOf(within)}.`;
}

function stemsLead({ said }: HowTrue["all"], { pickingCount, cameStems }: StemsTruth): string {
  const against = MADE.flatMap((made) => {
    const { stems } = said[made];
    return stems === null || stems.saidStems === 0 ? [] : [`${moreOrFewer(stems)} ${SAID[made]}`];
  });
  const of = `Of what was asked for on ${countOf(pickingCount, "recorded picking day")}, bed by bed, ${countOf(cameStems, "stem")} came`;
  return against.length === 0 ? `${of}.` : `${of}: ${allOf(against)}.`;
}

/** "8 % fewer than", "as many as" */
const moreOrFewer = ({ cameStems, saidStems }: StemsTruth): string => {
  const share = Math.round((cameStems / saidStems - 1) * 100) / 100;
  return share === 0 ? "as many as" : `${inPercent(Math.abs(share))} ${share > 0 ? "more" : "fewer"} than`;
};

/** "Dahlia came 8 days later than winter said, with 19 % fewer stems; what was said four weeks ahead was out by 4 days." Empty where winter has no first cut of it to be held against. */
export function cropTruthInWords({ crop, said }: Pick<CropTruth, "crop" | "said">): string {
  const { timing, stems } = said.winter;
  if (timing === null) return "";
  const share = stems && stems.saidStems > 0 ? moreOrFewer(stems) : "as many as";
  const withStems = share === "as many as" ? "" : `, with ${share.replace(/ than$/, " stems")}`;
  const ahead = said["four weeks ahead"].timing;
  const later = ahead
    ? `; what was said four weeks ahead was out by ${countOf(Math.abs(Math.round(ahead.daysLate)), "day")}`
    : "";
  return `${crop.name} came ${laterThan(timing.daysLate)} winter said${withStems}${later}.`;
}

const laterThan = (daysLate: number): string => {
  const days = Math.round(daysLate);
  return days === 0 ? "on the day that" : `${countOf(Math.abs(days), "day")} ${days > 0 ? "later" : "earlier"} than`;
};

/** "+8 days", "−1 day", "0 days": later than said is more. */
export const daysLateInSign = (daysLate: number): string => inSign(Math.round(daysLate), "day");

/** "−37 stems": fewer than said is less. */
export const stemsOffInSign = ({ cameStems, saidStems }: StemsTruth): string => inSign(cameStems - saidStems, "stem");

const inSign = (count: number, unit: string): string => {
  const sign = count > 0 ? "+" : count < 0 ? "−" : "";
  return `${sign}${countOf(Math.abs(count), unit)}`;
};

/** Of how many plantings the first cut is known: "12 of 17 first cuts". Empty where of none. */
export const firstCutsInWords = ({ plantingCount, said }: Omit<CropTruth, "crop">): string => {
  const { timing } = said["four weeks ahead"];
  return timing ? `${inWholes(timing.plantingCount)} of ${countOf(plantingCount, "first cut")}` : "";
};

/** The stems that can be compared, and on how many days they were cut: "158 stems", "on 25 picking days". */
export const stemsCameInWords = ({ cameStems, pickingCount }: StemsTruth): readonly [stems: string, on: string] => [
  countOf(cameStems, "stem"),
  `on ${countOf(pickingCount, "picking day")}`,
];
