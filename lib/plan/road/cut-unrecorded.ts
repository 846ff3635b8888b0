import type { Match } from "./match";

/**
 * Stems that bookings of events from today on have of days behind it on which nobody recorded a cut: they count as cut as planned [T1], for the bookings as they are now,
 * though one may have asked for less on those days [T7].
 * @param today      a day number; null where no day has passed
 * @param bookingId  of this booking alone; of all where it is not given
 */
export function stemsCutUnrecorded(
  { servings, needs }: Pick<Match, "servings" | "needs">,
  today: number | null,
  bookingId?: number,
): number {
  if (today === null) return 0;
  return servings.reduce((sum, { stand, cutDay, needIndex, stems }) => {
    const { eventDay, booking } = needs[needIndex];
    const isMeant = eventDay >= today && (bookingId === undefined || booking.id === bookingId);
    return isMeant && stand.kind === "planting" && !stand.isRecorded && cutDay < today ? sum + stems : sum;
  }, 0);
}
