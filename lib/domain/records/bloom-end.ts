import { z } from "zod";
import { type Field, field, open, type RecordOf, recordSchema } from "./field";
import { choice, decimal } from "./kinds";

const ENDS = ["weeks", "frost", "heat"] as const;

const endHighC: Field<number | null> = open({
  ...field(decimal, z.number("write degrees").min(10, "from 10 to 50 °C").max(50, "from 10 to 50 °C"), {
    label: "Heat that ends it",
    hint: "The usual high of a day. Only where heat ends the bloom, and only on a farm with a climate.",
    measure: "temperature",
  }),
  limits: { least: 10, most: 50 },
});

/**
 * What ends the bloom of a curve: its weeks; the frost, which a tender crop reaches by blooming on as in its last week; or heat, when the usual
 * high of a day comes to `endHighC` degrees Celsius.
 */
export const BLOOM_END = {
  ends: field(choice(ENDS), z.enum(ENDS), {
    absent: "weeks",
    label: "Bloom ends with",
    meanings: {
      weeks: "the last of its weeks",
      frost: "the frost: it blooms on as in its last week",
      heat: "heat, or the last of its weeks",
    },
  }),
  endHighC,
};

/** Heat that ends a bloom has its degrees, and nothing else has. */
export function checkEnd({ ends, endHighC }: RecordOf<typeof BLOOM_END>, context: z.core.$RefinementCtx): void {
  const say = (message: string) => context.addIssue({ code: "custom", path: ["endHighC"], message });
  if (ends === "heat" && endHighC === null) say("write the high of a day that ends the bloom");
  if (ends !== "heat" && endHighC !== null) say("choose heat as what ends the bloom, or take the degrees out");
}

/** What ends a bloom, by itself. */
export const bloomEndSchema = recordSchema(BLOOM_END).superRefine(checkEnd);

/** A bloom that ends with its weeks. */
export const BY_WEEKS = { ends: "weeks", endHighC: null } as const;
