import { type Day, inFull, mondayNumber, toDay, weekInWords } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Match } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import { isFocalOf } from "#lib/plan/winter/season";
import { coloursInWords } from "./colour-words";
import { countOf, forCount, inWholes } from "./numbers";

/** The focal needs of a season that are short with every bed dug, and what of them is still short with some kept. */
export type FocalCovered = {
  readonly shortStems: number;
  readonly leftStems: number;
  /** The days of the events that were short; null when none was. */
  readonly first: Day | null;
  readonly last: Day | null;
  /** What is left, by week and colours asked for, most first. */
  readonly left: readonly { readonly monday: Day; readonly colours: string; readonly stems: number }[];
};

/** Compares a season's part of two matches of the same needs: every candidate dug, and the choice. */
export function focalCovered(allDug: Match, chosen: Match, seasonYear: number): FocalCovered {
  const focal = [...allDug.needs.keys()].filter((index) => isFocalOf(seasonYear, allDug.needs[index]));
  const short = focal.filter((index) => allDug.shortStems[index] > 0);
  const days = short.map((index) => allDug.needs[index].eventDay);
  const left = new Map<string, { monday: Day; colours: string; stems: number }>();
  for (const index of focal) {
    const need = allDug.needs[index];
    if (chosen.shortStems[index] === 0) continue;
    const monday = toDay(mondayNumber(need.eventDay));
    const named = coloursInWords(need);
    const known = left.get(`${monday}/${named}`) ?? { monday, colours: named, stems: 0 };
    known.stems += chosen.shortStems[index];
    left.set(`${monday}/${named}`, known);
  }
  const sum = (match: Match) => focal.reduce((total, index) => total + match.shortStems[index], 0);
  return {
    shortStems: sum(allDug),
    leftStems: sum(chosen),
    first: days.length ? toDay(days.reduce((a, b) => Math.min(a, b))) : null,
    last: days.length ? toDay(days.reduce((a, b) => Math.max(a, b))) : null,
    left: [...left.values()].sort((a, b) => b.stems - a.stems || (a.monday < b.monday ? -1 : 1)),
  };
}

/** As many beds as the sentence names; of more it says how many, and the table has their ticks. */
const NAMED_BEDS = 12;
/** How many weeks and colours the sentence names before it says how many more there are. */
const NAMED_COUNT = 3;

/**
 * The choice in a sentence: "Keep beds D1, D4 and D7: 340 of 410 short focal stems of 1 June to 5 July are covered; 70 remain, in plum,
 * week of 14 June." `bedNames` are those kept.
 */
export function choiceInWords(bedNames: readonly string[], covered: FocalCovered): string {
  const { shortStems, leftStems, first, last } = covered;
  const keep = keepInWords(bedNames);
  const left = leftInWords(covered);
  if (!first || !last) return `${keep}: with every bed dug no focal stems are short${left}.`;
  const span = first === last ? `of ${dayInWords(first)}` : `of ${dayInWords(first)} to ${dayInWords(last)}`;
  const short = `${countOf(shortStems, "short focal stem")} ${span}`;
  const fewer = shortStems - leftStems;
  if (fewer === 0) return `${keep}: the ${short} ${forCount(shortStems, "stays", "stay")} short${left}.`;
  if (fewer < 0)
    return `${keep}: ${countOf(-fewer, "more focal stem")} ${forCount(-fewer, "goes", "go")} short beside the ${short}${left}.`;
  return `${keep}: ${inWholes(fewer)} of ${short} ${forCount(fewer, "is", "are")} covered${left}.`;
}

function keepInWords(bedNames: readonly string[]): string {
  if (bedNames.length === 0) return "Keep no bed";
  if (bedNames.length > NAMED_BEDS) return `Keep ${countOf(bedNames.length, "bed")}`;
  return `Keep ${forCount(bedNames.length, "bed")} ${allOf(bedNames)}`;
}

function leftInWords({ leftStems, left }: FocalCovered): string {
  if (leftStems === 0) return "";
  const remain = `; ${inWholes(leftStems)} ${forCount(leftStems, "remains", "remain")}`;
  const place = ({ monday, colours }: FocalCovered["left"][number]) =>
    `in ${colours}, ${weekInWords(monday).replace("Week", "week")}`;
  if (left.length === 1) return `${remain}, ${place(left[0])}`;
  const named = left.slice(0, NAMED_COUNT).map((group) => `${inWholes(group.stems)} ${place(group)}`);
  const othersCount = left.length - named.length;
  return `${remain}: ${named.join("; ")}${othersCount > 0 ? `; and ${countOf(othersCount, "smaller gap")}` : ""}`;
}

/** What keeping some beds covers, in a sentence: `dug` is the plan with every candidate dug, `tried` the one with these kept. */
export function keptInWords(dug: Plan, tried: Plan, keptBedIds: readonly number[]): string {
  const names = tried.snapshot.beds.filter(({ id }) => keptBedIds.includes(id)).map(({ name }) => name);
  return choiceInWords(names, focalCovered(dug.match, tried.match, dug.seasonYear));
}

/** "5 July" */
export const dayInWords = (day: Day): string => inFull(day).split(" ").slice(1, 3).join(" ");
