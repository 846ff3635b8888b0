import { z } from "zod";
import { inQuotes } from "../in-quotes";
import { field } from "./field";
import { type Kind, listOf } from "./kinds";

/** The two winter figures that counts of clumps teach. */
const WINTER_PARTS = ["ground", "store"] as const;
export type WinterPart = (typeof WINTER_PARTS)[number];

const shareSchema = z.number("write a share from 0 to 1").min(0, "a share from 0 to 1").max(1, "a share from 0 to 1");
const learnedWinterSchema = z.object({ part: z.enum(WINTER_PARTS), was: shareSchema, is: shareSchema });

/**
 * A winter figure that was taken from recorded winters: what it was before any of them was learned, and what it became. While the figure stands so, all
 * winters are weighed again against what it was; a figure that was typed since begins anew.
 */
export type LearnedWinter = z.infer<typeof learnedWinterSchema>;

const learnedWinter: Kind<LearnedWinter> = {
  input: "text",
  hint: 'ground or store, what it was and what it became, for example "ground: 0.75 to 0.82"',
  read: (text) => {
    const found = /^(ground|store): ([01](?:\.\d{1,20})?) to ([01](?:\.\d{1,20})?)$/.exec(text);
    return found
      ? { ok: true, value: { part: found[1], was: Number(found[2]), is: Number(found[3]) } }
      : { ok: false, message: `${inQuotes(text)} is not a lesson: write as in "ground: 0.75 to 0.82"` };
  },
  write: ({ part, was, is }) => `${part}: ${was} to ${is}`,
};

export const LEARNED_WINTERS = {
  learnedWinters: field(
    listOf(learnedWinter),
    z
      .array(learnedWinterSchema)
      .refine((all) => new Set(all.map(({ part }) => part)).size === all.length, "ground and store once each"),
    {
      absent: [],
      label: "Learned from recorded winters",
      hint: "What survival and loss in store were before Year’s end taught them. Left empty, they are weighed anew.",
    },
  ),
};
