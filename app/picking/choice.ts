import { z } from "zod";
import { addDays, mondayOfIsoWeek, parseDay, yearOf } from "#lib/domain/day";
import { daySchema, isoWeekSchema } from "#lib/domain/day-schema";
import { isSeasonYear } from "#lib/domain/season-years";
import type { PickChoice } from "#lib/plan/road/pick-sheets";

const query = z.object({
  day: daySchema.optional().catch(undefined),
  week: isoWeekSchema.optional().catch(undefined),
  booking: z.coerce.number().int().optional().catch(undefined),
});

/** Which pick list an address asks for; null when it asks for none, or for a day, week or booking that cannot be. */
export function choiceOf(parameters: Record<string, unknown>): PickChoice | null {
  const { day, week, booking } = query.parse(parameters);
  if (day && isSeasonYear(yearOf(day))) return { day };
  if (week && isSeasonYear(yearOf(mondayOfIsoWeek(week)))) return { week };
  return booking === undefined ? null : { bookingId: booking };
}

/** The same choice as an address's query. */
export function queryOf(choice: PickChoice): string {
  if ("day" in choice) return `day=${choice.day}`;
  return "week" in choice ? `week=${choice.week}` : `booking=${choice.bookingId}`;
}

/**
 * The seasons in which a day's or week's cuts may lie: its years, and the one after, since what is cut in December may serve January. None for a
 * booking, whose own day tells.
 */
export function yearsOfChoice(choice: PickChoice): number[] {
  if ("bookingId" in choice) return [];
  const first = "day" in choice ? parseDay(choice.day) : mondayOfIsoWeek(choice.week);
  const years = [yearOf(first), yearOf(addDays(first, 6))];
  return [...new Set([...years, yearOf(first) + 1])];
}
