import { z } from "zod";

/** Who may work with the farm beside its owner. A helper cuts and counts; a designer sees to bookings. */
export const HIRED_ROLES = ["helper", "designer"] as const;
export type HiredRole = (typeof HIRED_ROLES)[number];

/**
 * All that is kept of the people of a farm. `until` are moments in UTC, "YYYY-MM-DDThh:mm:ssZ"; of the password, of tokens, of codes and of
 * the calendar's address only hashes are kept. The owner is person 0, and no row of `people`.
 */
export const peopleSchema = z.object({
  ownerPassword: z.string().nullable(),
  people: z.array(
    z.object({ id: z.int().positive(), name: z.string(), role: z.enum(HIRED_ROLES), isEnded: z.boolean() }),
  ),
  sessions: z.array(z.object({ tokenHash: z.string(), personId: z.int(), until: z.string() })),
  invitations: z.array(z.object({ codeHash: z.string(), personId: z.int(), until: z.string() })),
  calendarHash: z.string().nullable().default(null),
});
export type PeopleKept = z.infer<typeof peopleSchema>;

/**
 * A person's name as it is told from others: two that look the same are the same, whatever a keyboard put between their letters and however it composed them.
 * Empty where nothing of the name can be seen.
 */
export const seenName = (name: string): string =>
  name.normalize("NFKC").replace(/\p{C}/gu, "").replace(/\s+/g, " ").trim().toLowerCase();
