import { allOf } from "#lib/domain/listed";
import {
  type CameOf,
  type CropTruth,
  type HowTrue,
  MADE,
  type Made,
  type StemsTruth,
  type TimingTruth,
  type Truth,
} from "#lib/plan/learning/how-true/truth";
import { countOf, inPercent, inWholes } from "./numbers";

/** "winter said" · "was said four weeks ahead": what a forecast is called where something is held against it. */
const SAID: Readonly<Record<Made, string>> = {
  winter: "winter said",
  spring: "spring said",
  "four weeks ahead": "was said four weeks ahead",
};

/**
 * How true a season's forecasts were, a sentence for each that is known: "Of 186 first cuts eight in ten came within 6 days of what winter said, 5 days of what spring said and 5 days of what was
 * said four weeks ahead." and "Bed by bed, the stems of 418 recorded pickings were off by 15 % of what winter said, …".
 */
export function howTrueLead({ all }: Pick<HowTrue, "all">): string[] {
  const { timing, stems } = all.said["four weeks ahead"];
  const within = against(all, ({ timing: one }, said) => one && `${countOf(one.mostDaysOff, "day")} of what ${said}`);
  const off = against(all, ({ stems: one }, said) =>
    one && one.saidStems > 0 ? `${offShare(one)} of what ${said}` : null,
  );
  return [
    ...(timing ? [`${mostOf(timing.plantingCount)} came within ${allOf(within)}.`] : []),
    ...(stems && off.length > 0
      ? [`Bed by bed, the stems of ${countOf(stems.pickingCount, "recorded picking")} were off by ${allOf(off)}.`]
      : []),
  ];
}

/** What is told of each forecast that says anything. */
const against = ({ said }: CameOf, told: (truth: Truth, said: string) => string | null): string[] =>
  MADE.flatMap((made) => told(said[made], SAID[made]) ?? []);

/** Of fewer than five, eight in ten are all. */
const FEW = 5;

const mostOf = (count: number): string =>
  count === 1
    ? "The one first cut that is known"
    : count < FEW
      ? `All ${countOf(count, "first cut")} that are known`
      : `Of ${countOf(count, "first cut")} eight in ten`;

/** "8 in 10 within 6 days", of all crops together; of a few all are. */
export const mostWithinInWords = ({ plantingCount, mostDaysOff }: TimingTruth): string =>
  `${plantingCount < FEW ? "all" : "8 in 10"} within ${countOf(mostDaysOff, "day")}`;

/** "15 %": by how much days were off either way, of the stems said, of which there are some. */
const offShare = ({ offStems, saidStems }: StemsTruth): string => inPercent(offStems / saidStems);

/** "stems off by 15 %". Empty where no stems were said. */
export const offInWords = (stems: StemsTruth): string =>
  stems.saidStems === 0 ? "" : `stems off by ${offShare(stems)}`;

/** What came in all, days that were off either way taken together: "In all 2,680 stems came: 8 % fewer than winter said, as many as spring said and 6 % fewer than was said four weeks ahead." Empty where nothing can be compared. */
export function inAllLead({ all }: Pick<HowTrue, "all">): string {
  const { stems } = all.said["four weeks ahead"];
  if (stems === null) return "";
  const than = against(all, ({ stems: one }, said) =>
    one && one.saidStems > 0 ? `${moreOrFewer(one)} ${said}` : null,
  );
  return `In all ${countOf(stems.cameStems, "stem")} came${than.length === 0 ? "" : `: ${allOf(than)}`}.`;
}

/** By what share more stems came than were said, fewer below 0, to the whole per cent; of stems of which some were said. */
const moreShare = ({ cameStems, saidStems }: StemsTruth): number => Math.round((cameStems / saidStems - 1) * 100) / 100;

/** "8 % fewer" */
const inMore = (share: number): string => `${inPercent(Math.abs(share))} ${share > 0 ? "more" : "fewer"}`;

/** "8 % fewer than", "as many as" */
const moreOrFewer = (stems: StemsTruth): string => {
  const share = moreShare(stems);
  return share === 0 ? "as many as" : `${inMore(share)} than`;
};

/** "Dahlia came 8 days later than winter said, with 19 % fewer stems; what was said four weeks ahead was out by 4 days." Empty where winter has no first cut of it to be held against. */
export function cropTruthInWords({ crop, said }: Pick<CropTruth, "crop" | "said">): string {
  const { timing, stems } = said.winter;
  if (timing === null) return "";
  const share = stems && stems.saidStems > 0 ? moreShare(stems) : 0;
  const withStems = share === 0 ? "" : `, with ${inMore(share)} stems`;
  const ahead = said["four weeks ahead"].timing;
  const later = ahead
    ? `; what was said four weeks ahead was out by ${countOf(Math.abs(Math.round(ahead.daysLate)), "day")}`
    : "";
  return `${crop.name} came ${laterThan(timing.daysLate)} winter said${withStems}${later}.`;
}

/** "Before: 9 days later in 2025, 1 day earlier in 2024." of the winters before; empty where none is known. */
export const wintersBeforeInWords = ({ wintersBefore }: Pick<CropTruth, "wintersBefore">): string =>
  wintersBefore.length === 0
    ? ""
    : `Before: ${wintersBefore.map(({ season, daysLate }) => `${laterOrEarlier(daysLate)} in ${season}`).join(", ")}.`;

const laterOrEarlier = (daysLate: number): string => {
  const days = Math.round(daysLate);
  return days === 0 ? "on the day" : `${countOf(Math.abs(days), "day")} ${days > 0 ? "later" : "earlier"}`;
};

const laterThan = (daysLate: number): string =>
  Math.round(daysLate) === 0 ? "on the day that" : `${laterOrEarlier(daysLate)} than`;

/** "+8 days", "−1 day", "0 days": later than said is more. */
export const daysLateInSign = (daysLate: number): string => inSign(Math.round(daysLate), "day");

/** "−37 stems": fewer than said is less. */
export const stemsOffInSign = ({ cameStems, saidStems }: StemsTruth): string => inSign(cameStems - saidStems, "stem");

const inSign = (count: number, unit: string): string => {
  const sign = count > 0 ? "+" : count < 0 ? "−" : "";
  return `${sign}${countOf(Math.abs(count), unit)}`;
};

/** Of how many plantings the first cut is known: "12 of 17 first cuts". Empty where of none. */
export const firstCutsInWords = ({ plantingCount, said }: CameOf): string => {
  const { timing } = said["four weeks ahead"];
  return timing ? `${inWholes(timing.plantingCount)} of ${countOf(plantingCount, "first cut")}` : "";
};

/** The stems that can be compared, and in how many pickings of a bed they were cut: "158 stems", "in 25 pickings". */
export const stemsCameInWords = ({
  cameStems,
  pickingCount,
}: StemsTruth): readonly [stems: string, pickings: string] => [
  countOf(cameStems, "stem"),
  `in ${countOf(pickingCount, "picking")}`,
];
