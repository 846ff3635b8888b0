import type { Database } from "better-sqlite3";
import { tooManyStems } from "#lib/domain/booking-stems";

/** Stems of each booking, as `stemsAskedFor` of lib/domain counts them. */
const STEMS_OF_BOOKINGS = `
  SELECT client, (1 + spare_share) * (
    coalesce((SELECT sum(piece_count * stems_per_piece) FROM booking_piece JOIN recipe_line USING (recipe_id)
              WHERE booking_id = booking.id), 0)
    + coalesce((SELECT sum(stem_count) FROM booking_stem_line WHERE booking_id = booking.id), 0)) AS stems
  FROM booking ORDER BY booking.id`;

/** Bookings that ask for more stems than a plan can reckon with, a sentence each. A change of a recipe may make one as well. */
export const overfullBookings = (sqlite: Database): string[] =>
  sqlite
    .prepare<[], { client: string; stems: number }>(STEMS_OF_BOOKINGS)
    .all()
    .flatMap(({ client, stems }) => {
      const wrong = tooManyStems(stems);
      return wrong ? [`the booking of ${client} ${wrong}`] : [];
    });
