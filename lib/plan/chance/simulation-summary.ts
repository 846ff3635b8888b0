import type { Day } from "#lib/domain/day";
import { type Colour, ROLES, type Role } from "#lib/domain/words";
import { type ObservedChance, observedChance } from "#lib/maths/observed-chance";
import { quantile } from "#lib/maths/quantile";
import { RunningMean } from "#lib/maths/running-mean";
import type { SeasonSamples } from "./simulation-samples";

/** What one season in ten stays below, half of them, and nine in ten. */
export type Band = { readonly low: number; readonly likely: number; readonly high: number };

/** A role in a week: stems in reach of its events, stems short, and the chance that any is short. */
type WeekRoleChance = {
  readonly role: Role;
  readonly reachableStems: Band;
  readonly shortStems: Band;
  readonly shortChance: ObservedChance;
};

type WeekChance = { readonly monday: Day; readonly roles: readonly WeekRoleChance[] };

/** The chance that every stem of a booking is covered. */
type BookingChance = {
  readonly bookingId: number;
  readonly shortStems: Band;
  readonly coveredChance: ObservedChance;
};

/** The chance that a need is short, and by how much. `needIndex` counts the needs of a match. */
type NeedChance = {
  readonly needIndex: number;
  readonly bookingId: number;
  readonly role: Role;
  readonly shortStems: Band;
  readonly shortChance: ObservedChance;
};

/** Free focal stems for an event on a day. */
export type OpenDayBand = {
  readonly day: Day;
  readonly stems: Band;
  readonly byColour: readonly { readonly colour: Colour; readonly stems: Band }[];
};

export type SimulationSummary = {
  readonly seasonCount: number;
  readonly weeks: readonly WeekChance[];
  readonly bookings: readonly BookingChance[];
  readonly needs: readonly NeedChance[];
  readonly openDays: readonly OpenDayBand[];
  readonly buyInCents: Band & { readonly mean: number; readonly standardError: number };
  readonly focalShortStems: Band;
};

/**
 * Low, likely and high per week and role, and how sure each booking is.
 * @throws RangeError if no season was sampled
 */
export function summary(samples: SeasonSamples): SimulationSummary {
  const { frame, seasonCount, shortStems, reachableStems, openStems } = samples;
  if (seasonCount === 0) throw new RangeError("samples must hold at least one season");
  const needCount = frame.needs.length;
  const shortOf = (needIndexes: readonly number[]) => sums(shortStems, needCount, seasonCount, needIndexes);
  const bandOf = (stems: Int32Array) => bandOfSorted(stems.sort());
  const shortOfAll = (needIndexes: readonly number[]) => {
    const stems = shortOf(needIndexes);
    const happened = stems.reduce((count, short) => count + (short > 0 ? 1 : 0), 0);
    return { happened, band: bandOf(stems) };
  };
  const columnCount = frame.mondays.length * ROLES.length;
  const weeks = frame.mondays.map((monday, week) => ({
    monday,
    roles: ROLES.map((role, roleIndex) => {
      const ofWeek = indexesWhere(frame.needs, (need) => need.monday === monday && need.role === role);
      const { happened, band } = shortOfAll(ofWeek);
      return {
        role,
        reachableStems: bandOf(sums(reachableStems, columnCount, seasonCount, [week * ROLES.length + roleIndex])),
        shortStems: band,
        shortChance: observedChance(happened, seasonCount),
      };
    }),
  }));
  const bookingIds = [...new Set(frame.needs.map(({ bookingId }) => bookingId))];
  const bookings = bookingIds.map((bookingId) => {
    const { happened, band } = shortOfAll(indexesWhere(frame.needs, (need) => need.bookingId === bookingId));
    return { bookingId, shortStems: band, coveredChance: observedChance(seasonCount - happened, seasonCount) };
  });
  const needs = frame.needs.map(({ bookingId, role }, needIndex) => {
    const { happened, band } = shortOfAll([needIndex]);
    return { needIndex, bookingId, role, shortStems: band, shortChance: observedChance(happened, seasonCount) };
  });
  const colourCount = frame.openColours.length;
  const openColumns = frame.openDays.length * colourCount;
  const openDays = frame.openDays.map((day, place) => {
    const columns = frame.openColours.map((_, colour) => place * colourCount + colour);
    return {
      day,
      stems: bandOf(sums(openStems, openColumns, seasonCount, columns)),
      byColour: frame.openColours.map((colour, index) => ({
        colour,
        stems: bandOf(sums(openStems, openColumns, seasonCount, [columns[index]])),
      })),
    };
  });
  const focal = indexesWhere(frame.needs, ({ role }) => role === "focal");
  return {
    seasonCount,
    weeks,
    bookings,
    needs,
    openDays,
    buyInCents: { ...bandOfSorted(Float64Array.from(samples.buyInCents).sort()), ...meanOf(samples.buyInCents) },
    focalShortStems: bandOf(shortOf(focal)),
  };
}

/** The low, likely and high of sorted numbers. */
const bandOfSorted = (sorted: ArrayLike<number>): Band => ({
  low: quantile(sorted, 0.1),
  likely: quantile(sorted, 0.5),
  high: quantile(sorted, 0.9),
});

/** The mean and its standard error. */
function meanOf(numbers: Iterable<number>) {
  const running = new RunningMean();
  for (const number of numbers) running.add(number);
  return { mean: running.mean, standardError: running.standardError() };
}

/** Of each season, the sum of some columns. */
function sums(rows: Int32Array, columnCount: number, seasonCount: number, columns: readonly number[]): Int32Array {
  const out = new Int32Array(seasonCount);
  for (const column of columns)
    for (let season = 0; season < seasonCount; season++) out[season] += rows[season * columnCount + column];
  return out;
}

const indexesWhere = <T>(rows: readonly T[], holds: (row: T) => boolean): number[] =>
  rows.flatMap((row, index) => (holds(row) ? [index] : []));
