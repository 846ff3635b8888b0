import { z } from "zod";
import { daySchema } from "../day-schema";
import { inQuotes } from "../in-quotes";
import { ROLES } from "../words";
import { field } from "./field";
import { type Kind, listOf } from "./kinds";

const earlierAskSchema = z.object({
  until: daySchema,
  role: z.enum(ROLES),
  stems: z.int("a whole number of stems").min(0, "none or more").max(1_000_000, "at most 1,000,000"),
});

/** On days before `until` a booking asked for so many stems of a role, spare included: it was made larger on that day [T7]. */
export type EarlierAsk = z.infer<typeof earlierAskSchema>;

const earlierAsk: Kind<EarlierAsk> = {
  input: "text",
  hint: 'how many stems of which role until which day, for example "24 focal until 2027-06-10"',
  read: (text) => {
    const [, stems, role, until] = /^(\d{1,7})\s+(\S+)\s+until\s+(\S+)$/.exec(text) ?? [];
    return until
      ? { ok: true, value: { stems: Number(stems), role, until } }
      : { ok: false, message: `${inQuotes(text)} is no earlier ask: write as in "24 focal until 2027-06-10"` };
  },
  write: ({ stems, role, until }) => `${stems} ${role} until ${until}`,
};

/** What a booking asked for before it was made larger in the weeks before its event. */
export const EARLIER_ASKS = {
  askedBefore: field(listOf(earlierAsk), z.array(earlierAskSchema).max(300, "at most 300 of them"), {
    absent: [],
    label: "Asked for before it was made larger",
    heading: "asked_before",
  }),
};

/** What stands of a booking that was never made larger. */
export const NEVER_LARGER: { askedBefore: EarlierAsk[] } = { askedBefore: [] };
