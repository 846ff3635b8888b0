import {
  addDays,
  type Day,
  isoWeekday,
  isoWeekOf,
  mondayOfIsoWeek,
  monthDayOf,
  sameDayIn,
  yearOf,
} from "#lib/domain/day";
import type { BedRecord, FarmRecords } from "#lib/domain/farm-records";

/** The season that the demo's sheets are written for. */
export const DEMO_SEASON = 2027;

/** From here on the screens open on the next season. */
const NEXT_SEASON_FROM = "11-01";

/** The season that the demo is loaded for: the one under way until the end of October, then the next. */
export const demoSeasonOn = (today: Day): number =>
  monthDayOf(today) < NEXT_SEASON_FROM ? yearOf(today) : yearOf(today) + 1;

/**
 * The demo's records in another season. People book Saturdays, so events keep their ISO week and weekday, and with them what hangs on
 * events and picking days: stems in the cooler and sprays. Plants go by the sun, so planting days keep month and day, in the year as many years
 * before or in the season as they were. Records of several seasons stay as far apart.
 */
export function movedToSeason(records: FarmRecords, season: number): FarmRecords {
  const yearCount = season - DEMO_SEASON;
  if (yearCount === 0) return records;
  return {
    ...records,
    ...(records.beds && { beds: records.beds.map((bed) => withSprayMoved(bed, yearCount)) }),
    ...(records.plantings && {
      plantings: records.plantings.map((planting) => ({
        ...planting,
        seasonYear: planting.seasonYear + yearCount,
        plantedOn: sameDayIn(planting.plantedOn, yearOf(planting.plantedOn) + yearCount),
      })),
    }),
    ...(records.bookings && {
      bookings: records.bookings.map((booking) => ({ ...booking, eventOn: sameWeekday(booking.eventOn, yearCount) })),
    }),
    ...(records.standingOrders && {
      standingOrders: records.standingOrders.map((order) => ({
        ...order,
        firstOn: sameWeekday(order.firstOn, yearCount),
        lastOn: sameWeekday(order.lastOn, yearCount),
      })),
    }),
    ...(records.cuts && {
      cuts: records.cuts.map((cut) => ({
        ...cut,
        cutOn: sameWeekday(cut.cutOn, yearCount),
        eventOn: cut.eventOn && sameWeekday(cut.eventOn, yearCount),
      })),
    }),
    ...(records.budLooks && {
      budLooks: records.budLooks.map((look) => ({ ...look, lookedOn: sameWeekday(look.lookedOn, yearCount) })),
    }),
    ...(records.losses && {
      losses: records.losses.map((loss) => ({
        ...loss,
        seenOn: sameDayIn(loss.seenOn, yearOf(loss.seenOn) + yearCount),
      })),
    }),
    ...(records.coolerMoves && {
      coolerMoves: records.coolerMoves.map((move) => ({
        ...move,
        movedOn: sameWeekday(move.movedOn, yearCount),
        cutOn: sameWeekday(move.cutOn, yearCount),
        eventOn: move.eventOn && sameWeekday(move.eventOn, yearCount),
      })),
    }),
    ...(records.purchases && {
      purchases: records.purchases.map((purchase) => ({
        ...purchase,
        orderedOn: sameWeekday(purchase.orderedOn, yearCount),
        arrivesOn: sameWeekday(purchase.arrivesOn, yearCount),
        arrivedOn: purchase.arrivedOn && sameWeekday(purchase.arrivedOn, yearCount),
        eventOn: purchase.eventOn && sameWeekday(purchase.eventOn, yearCount),
      })),
    }),
    ...(records.coolerStock && {
      coolerStock: records.coolerStock.map((stock) => ({ ...stock, cutOn: sameWeekday(stock.cutOn, yearCount) })),
    }),
  };
}

const withSprayMoved = (bed: BedRecord, yearCount: number): BedRecord => ({
  ...bed,
  noEntryFrom: bed.noEntryFrom && sameWeekday(bed.noEntryFrom, yearCount),
  noEntryUntil: bed.noEntryUntil && sameWeekday(bed.noEntryUntil, yearCount),
});

/** The same weekday of the same ISO week, so many ISO years on. Week 53 becomes the first week of the year after where there is none. */
export function sameWeekday(day: Day, yearCount: number): Day {
  const week = isoWeekOf(day);
  const monday = mondayOfIsoWeek(`${String(Number(week.slice(0, 4)) + yearCount).padStart(4, "0")}${week.slice(4)}`);
  return addDays(monday, isoWeekday(day) - 1);
}
