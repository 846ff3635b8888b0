import { type Day, mondayNumber, toDay, toDayNumber } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { COLOURS, type Colour, ROLES, type Role } from "#lib/domain/words";
import { holdWindow } from "#lib/plan/road/hold-window";
import type { Need } from "#lib/plan/road/needs";
import type { VarietySupply } from "#lib/plan/road/supply";

/** What the columns of sampled seasons stand for: the needs, weeks, open days and colours, each in the order of its columns. */
export type SampleFrame = {
  readonly seasonYear: number;
  /** As a match has them; `monday` is that of the week of the event. */
  readonly needs: readonly FrameNeed[];
  readonly mondays: readonly Day[];
  readonly openDays: readonly Day[];
  readonly openColours: readonly Colour[];
};

type FrameNeed = {
  readonly bookingId: number;
  readonly role: Role;
  readonly stems: number;
  readonly monday: Day;
};

/** Which supply nodes count towards which columns: `node[i]` towards `column[i]`. */
export type Reach = { readonly node: Int32Array; readonly column: Int32Array };

const SATURDAY_FROM_MONDAY = 5;

/** The Mondays of every week in which something may be cut or is to be served, none left out. */
export function mondaysOf(possible: readonly VarietySupply[], needs: readonly Need[]): number[] {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  const see = (day: number) => {
    first = Math.min(first, mondayNumber(day));
    last = Math.max(last, mondayNumber(day));
  };
  for (const { eventDay } of needs) see(eventDay);
  for (const { days } of possible) for (const day of [days[0], days[days.length - 1]]) see(day);
  return first > last ? [] : Array.from({ length: (last - first) / 7 + 1 }, (_, index) => first + index * 7);
}

/** The Saturdays of the weeks. */
export const saturdaysOf = (mondays: readonly number[]): Day[] =>
  mondays.map((monday) => toDay(monday + SATURDAY_FROM_MONDAY));

/** Which nodes a week's events reach, by role: the same stems as a plan's weeks count. Columns are week × role. */
export function weekReach(
  farm: Farm,
  possible: readonly VarietySupply[],
  needs: readonly Need[],
  mondays: readonly number[],
): Reach {
  const eventDays = mondays.map(() => new Set<number>());
  for (const { eventDay } of needs) eventDays[(mondayNumber(eventDay) - mondays[0]) / 7].add(eventDay);
  const pairs = new Pairs();
  let firstNode = 0;
  for (const { crop, days } of possible) {
    const roleIndexes = crop.roles.map((role) => ROLES.indexOf(role));
    mondays.forEach((monday, week) => {
      const events = eventDays[week].size ? [...eventDays[week]] : [monday + SATURDAY_FROM_MONDAY];
      const windows = events.map((eventDay) => holdWindow(eventDay, farm.leadDays, crop.holdDays.count));
      days.forEach((day, index) => {
        if (windows.some(({ earliest, latest }) => day >= earliest && day <= latest))
          for (const role of roleIndexes) pairs.push(firstNode + index, week * ROLES.length + role);
      });
    });
    firstNode += days.length;
  }
  return pairs.reach();
}

/** Which nodes an event on an open day would reach, focal only, by colour. Columns are day × colour. */
export function openReach(
  farm: Farm,
  possible: readonly VarietySupply[],
  openDays: readonly Day[],
  openColours: readonly Colour[],
): Reach {
  const pairs = new Pairs();
  let firstNode = 0;
  for (const { variety, crop, days } of possible) {
    if (crop.roles.includes("focal"))
      openDays.forEach((openDay, place) => {
        const { earliest, latest } = holdWindow(toDayNumber(openDay), farm.leadDays, crop.holdDays.count);
        days.forEach((day, index) => {
          if (day >= earliest && day <= latest)
            pairs.push(firstNode + index, place * openColours.length + openColours.indexOf(variety.colour));
        });
      });
    firstNode += days.length;
  }
  return pairs.reach();
}

/** The colours that focal varieties of the supply have, in the order of the list of colours. */
export function focalColours(supplies: readonly VarietySupply[]): Colour[] {
  const seen = new Set(
    supplies.filter(({ crop }) => crop.roles.includes("focal")).map(({ variety }) => variety.colour),
  );
  return COLOURS.filter((colour) => seen.has(colour));
}

class Pairs {
  readonly #nodes: number[] = [];
  readonly #columns: number[] = [];

  push(node: number, column: number): void {
    this.#nodes.push(node);
    this.#columns.push(column);
  }

  reach = (): Reach => ({ node: Int32Array.from(this.#nodes), column: Int32Array.from(this.#columns) });
}
