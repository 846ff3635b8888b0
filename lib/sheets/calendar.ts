import ical, { type ICalCalendar } from "ical-generator";
import { addDays, toDay, withWeekday } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import { placeOf } from "#lib/plan/road/pick-list";
import { byPickingDay, pickTotals } from "#lib/plan/road/pick-sheets";
import type { Plan } from "#lib/plan/road/plan";
import { bookingsOf } from "#lib/plan/road/seasons";

/**
 * The season's picking days and event days as an iCalendar file (RFC 5545): all-day events, one for each picking day with what to cut and
 * for whom, and for each booking that is cut for its event, its design day, and its delivery where that is another day. The same plan gives the same file; an event keeps its UID, so that a calendar that reads the file again
 * moves it and does not double it.
 * @param stamp  when the file was made, as "YYYY-MM-DDThh:mm:ssZ"
 */
export function calendarFile({ snapshot, work: { match, pickList }, seasonYear }: Plan, stamp: string): string {
  const calendar = ical({
    name: `${snapshot.farm.name}, season ${seasonYear}`,
    prodId: { company: "Stems and Saturdays", product: "Season", language: "EN" },
  });
  for (const { cutDay, lines } of byPickingDay(pickList)) {
    const { stems } = pickTotals(lines);
    const day = toDay(cutDay);
    const description = lines
      .map(
        (line) =>
          `${line.stems} ${line.crop.name} ${line.variety.name} (${line.variety.colour}), ${placeOf(line.stand)}: ${line.booking.client}`,
      )
      .join("\n");
    allDay(calendar, stamp, `picking-${day}@stems-and-saturdays.invalid`, day, `Pick ${stems} stems`, description);
  }
  for (const booking of bookingsOf(match, seasonYear)) {
    const { designDays, deliverDays } = eventDaysOf(snapshot.farm, booking);
    const before = (name: string, daysBefore: number) =>
      allDay(
        calendar,
        stamp,
        `${name.toLowerCase()}-${booking.id}@stems-and-saturdays.invalid`,
        addDays(booking.eventOn, -daysBefore),
        `${name}: ${booking.client}`,
        `For ${withWeekday(booking.eventOn)}`,
      );
    before("Design", designDays);
    if (deliverDays > 0) before("Deliver", deliverDays);
    allDay(
      calendar,
      stamp,
      `event-${booking.id}@stems-and-saturdays.invalid`,
      booking.eventOn,
      `${booking.client} (${booking.status})`,
      booking.note,
    );
  }
  return calendar.toString();
}

function allDay(
  calendar: ICalCalendar,
  stamp: string,
  id: string,
  start: string,
  summary: string,
  description: string,
): void {
  calendar.createEvent({ id, start, allDay: true, stamp, summary, description });
}
