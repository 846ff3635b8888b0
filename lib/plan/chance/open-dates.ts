import { type Day, mondayOf, toDay, toDayNumber } from "#lib/domain/day";
import { COLOURS, type Colour } from "#lib/domain/words";
import { holdWindow } from "#lib/plan/road/hold-window";
import type { Plan } from "#lib/plan/road/plan";
import { StemsByDay } from "#lib/plan/road/stems-left";
import type { Band, OpenDayBand } from "./simulation-summary";

/**
 * What a day has left for one more event. `focalStems` are focal stems cut in its hold window that nobody has claimed; they sum over
 * `byColour`, which lists the colours that have any. Days near each other share stems: what one takes, the other loses. `band` is
 * low / likely / high over sampled seasons; null when none were given for the day.
 */
export type OpenDate = {
  readonly day: Day;
  readonly focalStems: number;
  readonly byColour: readonly OpenColour[];
  readonly band: Band | null;
  /** Focal stems that the week's bookings ask for, and how many of those are short. */
  readonly promisedFocalStems: number;
  readonly shortFocalStems: number;
};

type OpenColour = { readonly colour: Colour; readonly stems: number; readonly band: Band | null };

/** `days`: every Saturday of the season's weeks, when left out. `bands`: the open days of a simulation's summary. */
export type OpenDatesOptions = { readonly days?: readonly Day[]; readonly bands?: readonly OpenDayBand[] };

const SATURDAY_FROM_MONDAY = 5;

/** The days asked for, each with the focal stems it has left [W8]. */
export function openDates(plan: Plan, { days, bands = [] }: OpenDatesOptions = {}): OpenDate[] {
  const { match, weeks, snapshot } = plan;
  const stems = new StemsByDay(match);
  const focal = match.supplies.flatMap(({ crop, variety }, supplyIndex) =>
    crop.roles.includes("focal") ? [{ supplyIndex, colour: variety.colour, holdDays: crop.holdDays.count }] : [],
  );
  const focalOfWeek = new Map(weeks.map(({ monday, roles }) => [monday, roles.find(({ role }) => role === "focal")]));
  const bandOfDay = new Map(bands.map((band) => [band.day, band]));
  const asked = days ?? weeks.map(({ monday }) => toDay(toDayNumber(monday) + SATURDAY_FROM_MONDAY));
  return asked.map((day) => {
    const left = new Map<Colour, number>();
    for (const { supplyIndex, colour, holdDays } of focal) {
      const { earliest, latest } = holdWindow(toDayNumber(day), snapshot.farm.leadDays, holdDays);
      const free = stems.left(supplyIndex, Math.ceil(earliest), latest);
      if (free > 0) left.set(colour, (left.get(colour) ?? 0) + free);
    }
    const band = bandOfDay.get(day);
    const week = focalOfWeek.get(mondayOf(day));
    return {
      day,
      focalStems: [...left.values()].reduce((sum, free) => sum + free, 0),
      byColour: byColour(left, band),
      band: band?.stems ?? null,
      promisedFocalStems: week?.needStems ?? 0,
      shortFocalStems: week?.shortStems ?? 0,
    };
  });
}

/** The colours with anything left, now or in a good season, in the order of the list of colours. */
function byColour(left: ReadonlyMap<Colour, number>, band: OpenDayBand | undefined): OpenColour[] {
  const bands = new Map(band?.byColour.map(({ colour, stems }) => [colour, stems]));
  return COLOURS.filter((colour) => left.has(colour) || (bands.get(colour)?.high ?? 0) > 0).map((colour) => ({
    colour,
    stems: left.get(colour) ?? 0,
    band: bands.get(colour) ?? null,
  }));
}
