import { dayInYear, type MonthDay, PLAIN_YEAR } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Change, ChangeOf, WhatIf } from "#lib/domain/what-if";
import { type PlanTotals, winterCents } from "#lib/plan/what-if/comparison";
import { dayInWords } from "./keep-or-dig-words";
import { countOf, forCount, inPercent, inRoundMoney, inWholes, inWords } from "./numbers";

/** What is supposed, as the subject of a sentence: "six beds kept", "a frost on 4 October", or the name it was given. */
type Subject = { readonly words: string; readonly isPlural: boolean };

type Named = Pick<WhatIf, "name" | "changes">;

/**
 * What comes of each what-if, as a title: "Six beds kept win back 508 stems; a frost on 4 October takes 277". `stems` are those that are short more than
 * now, or fewer below 0.
 */
export function differenceTitle(whatIfs: readonly { whatIf: Named; stems: number }[], farm: Snapshot): string {
  const title = whatIfs
    .map(({ whatIf, stems }, index) => {
      const { words, isPlural } = subjectOf(whatIf, farm);
      const verb = (one: string) => (isPlural ? one : `${one}s`);
      if (stems === 0) return `${words} ${verb("change")} nothing that is short`;
      const size = index === 0 ? countOf(Math.abs(stems), "stem") : inWholes(Math.abs(stems));
      return stems < 0 ? `${words} ${verb("win")} back ${size}` : `${words} ${verb("take")} ${size}`;
    })
    .join("; ");
  return title.charAt(0).toUpperCase() + title.slice(1);
}

function subjectOf({ name, changes }: Named, farm: Snapshot): Subject {
  for (const [kind, fate] of [
    ["bed-kept", "kept"],
    ["bed-dug", "dug"],
  ] as const)
    if (changes.length > 0 && changes.every((change) => change.kind === kind))
      return {
        words: `${inWords(changes.length)} ${forCount(changes.length, "bed")} ${fate}`,
        isPlural: changes.length > 1,
      };
  const words = changes.length === 1 ? onlyChange(changes[0], farm) : null;
  return { words: words ?? `“${name}”`, isPlural: false };
}

/** The change as a noun where a short one says it; else null. */
function onlyChange(change: Change, { bookings, crops }: Snapshot): string | null {
  switch (change.kind) {
    case "frost-moved":
      return `a frost on ${frostInWords(change)}`;
    case "season-shifted": {
      const crop = crops.find(({ id }) => id === change.cropId)?.name.toLowerCase();
      if (change.cropId !== null && crop === undefined) return null;
      const days = countOf(Math.abs(change.days), "day");
      return `a ${crop ? `${crop} ` : ""}season ${days} ${change.days < 0 ? "early" : "late"}`;
    }
    case "yield-scaled":
      return change.cropId === null ? `a yield of ${inPercent(change.factor)}` : null;
    case "booking-added":
      return `a booking of ${change.booking.client}`;
    case "booking-dropped": {
      const booking = bookings.find(({ id }) => id === change.bookingId);
      return booking ? `losing ${booking.client}` : null;
    }
    default:
      return null;
  }
}

const frostInWords = ({ firstFrost }: ChangeOf<"frost-moved">): string => monthDayInWords(firstFrost);

/** "4 October" */
const monthDayInWords = (monthDay: MonthDay): string => dayInWords(dayInYear(monthDay, PLAIN_YEAR));

/** What the button that makes it so says: "Adopt these six", "Reckon with 4 October", "Adopt this what-if". */
export function adoptInWords(changes: readonly Change[]): string {
  if (changes.length > 0 && changes.every(({ kind }) => kind === "bed-kept"))
    return changes.length === 1 ? "Adopt this bed" : `Adopt these ${inWords(changes.length)}`;
  const [only] = changes;
  return changes.length === 1 && only.kind === "frost-moved"
    ? `Reckon with ${frostInWords(only)}`
    : "Adopt this what-if";
}

/**
 * What a what-if comes to beside the farm as it stands: "508 fewer stems short in ten weeks, $2,170 less to buy in and a winter $1,292 cheaper."
 * `weekCount` are the weeks that change.
 */
export function differenceInWords(difference: PlanTotals, weekCount: number): string {
  const { shortStems, buyInCents, coveredBookingCount } = difference;
  const winter = winterCents(difference.winter);
  const weeks = `in ${inWords(weekCount)} ${forCount(weekCount, "week")}`;
  const stems = inWholes(Math.abs(shortStems));
  const parts = [
    shortStems === 0
      ? weekCount > 0
        ? `as many stems short in all, otherwise shared ${weeks}`
        : "no week is short of more stems or fewer"
      : `${stems} ${shortStems < 0 ? "fewer" : "more"} ${forCount(Math.abs(shortStems), "stem")} short ${weeks}`,
    isMoney(buyInCents) && `${inRoundMoney(Math.abs(buyInCents))} ${buyInCents < 0 ? "less" : "more"} to buy in`,
    isMoney(winter) && `a winter ${inRoundMoney(Math.abs(winter))} ${winter < 0 ? "cheaper" : "dearer"}`,
    coveredBookingCount !== 0 &&
      `${countOf(Math.abs(coveredBookingCount), "booking")} ${coveredBookingCount > 0 ? "more" : "fewer"} in full`,
  ];
  const words = `${allOf(parts.filter((part) => part !== false))}.`;
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Half a dollar or more. */
const isMoney = (cents: number): boolean => Math.abs(cents) >= 50;

/** How likely a supposed first frost is, by the farm's own dates; null when nothing of the kind is supposed. */
export function frostOddsInWords(changes: readonly Change[], { farm: { frost } }: Snapshot): string | null {
  const [only] = changes;
  if (changes.length !== 1 || only.kind !== "frost-moved") return null;
  const early = monthDayInWords(frost.firstAutumnP10);
  if (only.firstFrost === frost.firstAutumnP10) return `One year in ten has its first frost by ${early}.`;
  const median = monthDayInWords(frost.firstAutumnP50);
  return `You reckon with ${median}; one year in ten has its first frost by ${early}.`;
}
