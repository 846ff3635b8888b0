import { z } from "zod";
import { daySchema } from "./day-schema";
import { CUT } from "./records/cut";
import type { SentTally } from "./unsent";

/** More bookings than share a row of the list. */
const MOST_BOOKINGS = 1000;

/** A moment in UTC, "YYYY-MM-DDThh:mm:ssZ". */
const momentSchema = z.string().regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/, "not a moment");

/** What a list asked for: stems to cut for each booking, in the order in which they are served. */
const askedSchema = z
  .array(z.tuple([z.int(), z.int().min(0).max(1_000_000)]).readonly())
  .max(MOST_BOOKINGS)
  .readonly();

/** A tally as a page or a phone sends it; its key apart. */
export const tallySchema = z.object({
  cutOn: daySchema,
  bedId: CUT.bedId.schema,
  varietyId: CUT.varietyId.schema,
  asked: askedSchema,
  stemsCut: CUT.stemsCut.schema,
  restStands: z.boolean().optional(),
  seenStems: z.int().min(0),
  seenRevision: z.int().min(0),
  countedAt: momentSchema,
});
export type Tally = z.infer<typeof tallySchema>;

const countSchema = tallySchema.extend({ key: z.string().regex(/^[\w-]{8,80}$/, "not a key") });

/** A tally with the key under which it is taken once, and what it says of its row. */
export const sentTallySchema = countSchema.extend({
  kind: z.enum(["counted", "corrected", "taken back"]).default("counted"),
  of: countSchema.optional(),
}) satisfies z.ZodType<SentTally>;

/**
 * A tally as it is kept: who counted how many stems, and when. `countedBy` is null where nobody is named. `isApart`: it came after the record had been
 * corrected, and is in no sum until somebody says what it is [T10].
 */
export type KeptTally = {
  readonly id: number;
  readonly cutOn: string;
  readonly bedId: number;
  readonly varietyId: number;
  readonly stemsCut: number;
  readonly restStands: boolean;
  readonly countedAt: string;
  readonly countedBy: string | null;
  readonly isApart: boolean;
};
