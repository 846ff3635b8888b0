import { type Day, mondayOf, toDay, toDayNumber } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { COLOURS, type Colour } from "#lib/domain/words";
import { holdWindow } from "./hold-window";
import type { Match } from "./match";
import type { Plan } from "./plan";
import { SATURDAY_FROM_MONDAY } from "./reach";
import { StemsByDay } from "./stems-left";

/**
 * What a day has left for one more event. `focalStems` are focal stems cut in its hold window that nobody has claimed; they sum over
 * `byColour`, which lists the colours that have any. Days near each other share stems: what one takes, the other loses.
 */
export type OpenDate = {
  readonly day: Day;
  readonly focalStems: number;
  readonly byColour: readonly { readonly colour: Colour; readonly stems: number }[];
  /** The least that poor years leave [G6]. */
  readonly poorYearStems: number;
  /** Focal stems that the week's bookings ask for, and how many of those are short. */
  readonly promisedFocalStems: number;
  readonly shortFocalStems: number;
};

/**
 * The days asked for, each with the focal stems it has left [W8].
 * @param poor  the plan's needs matched in poor years (`poorMatches`)
 * @param days  every Saturday of the season's weeks, when left out
 */
export function openDates({ match, weeks, snapshot }: Plan, poor: readonly Match[], days?: readonly Day[]): OpenDate[] {
  const openIn = openStems(snapshot.farm, match);
  const openInPoor = poor.map((year) => openStems(snapshot.farm, year));
  const focalOfWeek = new Map(weeks.map(({ monday, roles }) => [monday, roles.find(({ role }) => role === "focal")]));
  const asked = days ?? weeks.map(({ monday }) => toDay(toDayNumber(monday) + SATURDAY_FROM_MONDAY));
  return asked.map((day) => {
    const left = openIn(day);
    const week = focalOfWeek.get(mondayOf(day));
    const focalStems = sum(left);
    return {
      day,
      focalStems,
      byColour: COLOURS.flatMap((colour) => {
        const stems = left.get(colour);
        return stems ? [{ colour, stems }] : [];
      }),
      poorYearStems: Math.min(focalStems, ...openInPoor.map((openOn) => sum(openOn(day)))),
      promisedFocalStems: week?.needStems ?? 0,
      shortFocalStems: week?.shortStems ?? 0,
    };
  });
}

/** Of a match, the focal stems by colour that nobody has claimed in the hold window of a day. */
function openStems({ leadDays }: Farm, match: Match): (day: Day) => ReadonlyMap<Colour, number> {
  const stems = new StemsByDay(match);
  const focal = match.supplies.flatMap(({ crop, variety, hold, bookingId }, supplyIndex) =>
    crop.roles.includes("focal") && bookingId === undefined ? [{ supplyIndex, colour: variety.colour, hold }] : [],
  );
  return (day) => {
    const left = new Map<Colour, number>();
    for (const { supplyIndex, colour, hold } of focal) {
      const { earliest, latest } = holdWindow(toDayNumber(day), leadDays, hold);
      left.set(colour, (left.get(colour) ?? 0) + stems.left(supplyIndex, earliest, latest));
    }
    return left;
  };
}

const sum = (byColour: ReadonlyMap<Colour, number>): number =>
  [...byColour.values()].reduce((total, stems) => total + stems, 0);
