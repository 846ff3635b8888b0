import { z } from "zod";
import { daySchema, isoWeekSchema } from "#lib/domain/day";
import type { PickChoice } from "#lib/plan/pick-sheets";

const query = z.object({
  day: daySchema.optional().catch(undefined),
  week: isoWeekSchema.optional().catch(undefined),
  booking: z.coerce.number().int().optional().catch(undefined),
});

/** Which pick list an address asks for; null when it asks for none, or for a day, week or booking that cannot be. */
export function choiceOf(parameters: Record<string, unknown>): PickChoice | null {
  const { day, week, booking } = query.parse(parameters);
  if (day) return { day };
  if (week) return { week };
  return booking === undefined ? null : { bookingId: booking };
}

/** The same choice as an address's query. */
export function queryOf(choice: PickChoice): string {
  if ("day" in choice) return `day=${choice.day}`;
  return "week" in choice ? `week=${choice.week}` : `booking=${choice.bookingId}`;
}

/** The season that a choice lies in: of the day, or of the week's Thursday; null for a booking, whose own day tells. */
export function yearOfChoice(choice: PickChoice): number | null {
  if ("day" in choice) return Number(choice.day.slice(0, 4));
  return "week" in choice ? Number(choice.week.slice(0, 4)) : null;
}
