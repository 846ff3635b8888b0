import type { Farm } from "#lib/domain/records/farm-settings";
import { holdWindow, servingWindow } from "./hold-window";
import type { Match } from "./match";
import type { Need } from "./needs";
import { seasonOfBooking } from "./seasons";
import { StemsByDay } from "./stems-left";
import { whenAsked } from "./when-asked";

/**
 * Why a stem is short. `promised`: stems in reach serve a better claim. `colours`: the role is in bloom, but not in these colours. `stem`: in these
 * colours too, but not with the head, the length or the hold out of water that is asked for.
 * `hold window`: it blooms near the day in these colours, but not within the days it can be held. `not in bloom`: none of that.
 */
const GAP_REASONS = ["promised", "colours", "stem", "hold window", "not in bloom"] as const;
export type GapReason = (typeof GAP_REASONS)[number];

/**
 * A need that is not covered, or not in full. The reasons' stems sum to `shortStems` [G1]. What blooms around it (all from `reachableStems` on) is
 * looked up when it is first asked for: many ask only what is short.
 */
export type Gap = {
  readonly needIndex: number;
  readonly need: Need;
  readonly coveredStems: number;
  readonly shortStems: number;
  /** Stems cut in the hold window that this need could take, whoever has them now. */
  readonly reachableStems: number;
  readonly reasons: readonly { readonly reason: GapReason; readonly stems: number }[];
  readonly couldCover: CouldCover;
};

/** Free stems that would help if she bends a rule: in bloom in the role, but in another colour; in these colours, held longer or cut later. */
type CouldCover = {
  readonly otherColourStems: number;
  /** In these colours, but not as the stem is asked to be. */
  readonly otherKindStems: number;
  readonly heldLongerStems: number;
  readonly laterStems: number;
};

/** "Near the day" for the reason `hold window`: cut at most so many days before or after the event. Our assumption. */
export const NEAR_DAYS = 14;

/** Stems that some gaps are short of in all. */
export const stemsShort = (gaps: readonly Pick<Gap, "shortStems">[]): number =>
  gaps.reduce((sum, { shortStems }) => sum + shortStems, 0);

/** Every gap of a season, in the order of the match's needs. */
export function gaps(farm: Farm, match: Match, seasonYear: number): Gap[] {
  const stems = whenAsked(() => new StemsByDay(match));
  const out: Gap[] = [];
  match.needs.forEach((need, needIndex) => {
    const shortStems = match.shortStems[needIndex];
    if (shortStems === 0 || seasonOfBooking(need.booking) !== seasonYear) return;
    const around = whenAsked(() => explained(need, shortStems, lookAround(farm, match, stems(), need)));
    out.push({
      needIndex,
      need,
      coveredStems: need.stems - shortStems,
      shortStems,
      get reachableStems() {
        return around().reachableStems;
      },
      get reasons() {
        return around().reasons;
      },
      get couldCover() {
        return around().couldCover;
      },
    });
  });
  return out;
}

type Surroundings = { reachable: number; otherColour: number; otherKind: number; outsideWindow: number } & CouldCover;

function explained(
  need: Need,
  shortStems: number,
  around: Surroundings,
): Pick<Gap, "reachableStems" | "reasons" | "couldCover"> {
  const coveredStems = need.stems - shortStems;
  let unexplained = shortStems;
  const part = (reason: GapReason, most: number) => {
    const stems = Math.min(unexplained, most);
    unexplained -= stems;
    return { reason, stems };
  };
  const reasons = [
    part("promised", around.reachable - coveredStems),
    part("colours", around.otherColour),
    part("stem", around.otherKind),
    part("hold window", around.outsideWindow),
    part("not in bloom", unexplained),
  ].filter(({ stems }) => stems > 0);
  const { reachable, otherColourStems, otherKindStems, heldLongerStems, laterStems } = around;
  const couldCover = { otherColourStems, otherKindStems, heldLongerStems, laterStems };
  return { reachableStems: reachable, reasons, couldCover };
}

/** What blooms around a need: in reach, in other colours, and outside the hold window. */
function lookAround(_farm: Farm, match: Match, stems: StemsByDay, need: Need): Surroundings {
  const around = {
    reachable: 0,
    otherColour: 0,
    otherKind: 0,
    outsideWindow: 0,
    otherColourStems: 0,
    otherKindStems: 0,
    heldLongerStems: 0,
    laterStems: 0,
  };
  const { varieties, otherColours, otherStems } = match.fits.of(need);
  const windowOf = (supplyIndex: number) => servingWindow(need.eventDay, need.leadDays, match.supplies[supplyIndex]);
  for (const supplyIndex of otherColours) {
    const { earliest, latest } = windowOf(supplyIndex);
    around.otherColour += stems.all(supplyIndex, earliest, latest);
    around.otherColourStems += stems.left(supplyIndex, earliest, latest);
  }
  for (const supplyIndex of otherStems) {
    const { earliest, latest } = windowOf(supplyIndex);
    around.otherKind += stems.all(supplyIndex, earliest, latest);
    around.otherKindStems += stems.left(supplyIndex, earliest, latest);
  }
  for (const supplyIndex of match.fits.othersOwn(need)) {
    // As this need could take them: that they serve their own booking up to its day is no help to another.
    const { earliest, latest } = holdWindow(need.eventDay, need.leadDays, match.supplies[supplyIndex].hold);
    around.reachable += stems.all(supplyIndex, earliest, latest);
  }
  for (const supplyIndex of varieties) {
    const { earliest, latest } = windowOf(supplyIndex);
    const inWindow = stems.all(supplyIndex, earliest, latest);
    around.reachable += inWindow;
    const [near, far] = [need.eventDay - NEAR_DAYS, need.eventDay + NEAR_DAYS];
    around.heldLongerStems += stems.left(supplyIndex, near, earliest - 1);
    around.laterStems += stems.left(supplyIndex, latest + 1, far);
    around.outsideWindow += stems.all(supplyIndex, near, earliest - 1) + stems.all(supplyIndex, latest + 1, far);
  }
  return around;
}
