import { z } from "zod";
import { daySchema } from "../day-schema";
import { inQuotes } from "../in-quotes";
import { readNumber, writeNumber } from "../read-number";
import { count, field, open } from "./field";
import { day, type Kind, listOf } from "./kinds";

/** More than any booking counts of one thing. */
const MOST = 1_000_000_000;

const finalPieceSchema = z.object({
  count: z.number("write a number").gt(0, "more than 0").max(MOST, "at most 1,000,000,000"),
  what: z.string().trim().min(1, "say what is counted").max(100, "a name has at most 100 letters"),
});

/** So many of a piece, by the name of its recipe, or of loose stems of a role, as a client settled them. */
export type FinalPiece = z.infer<typeof finalPieceSchema>;

const finalPiece: Kind<FinalPiece> = {
  input: "text",
  hint: 'how many and of what, for example "6 Bouquet"',
  read: (text, writing) => {
    const [, number = "", what = ""] = /^(\S+)\s+([\s\S]+)$/.exec(text) ?? [];
    const read = readNumber(number, writing?.decimalMark);
    return read.ok && what
      ? { ok: true, value: { count: read.value, what } }
      : { ok: false, message: `${inQuotes(text)} is no count of pieces: write as in "6 Bouquet"` };
  },
  write: ({ count: one, what }, mark) => `${writeNumber(one, mark)} ${what}`,
};

/**
 * The final count of a booking [T13]: the day it was taken (null: none was), the pieces and loose stems as they were then, and the stems that they asked for, spare
 * included (null where nobody knows).
 */
export const FINAL_COUNT = {
  finalOn: open(field(day, daySchema, { label: "Final count taken on" })),
  finalPieces: field(listOf(finalPiece), z.array(finalPieceSchema).max(600, "at most 600 lines"), {
    absent: [],
    label: "Final count",
  }),
  finalStems: open(count({ of: "stems", least: 0, most: MOST, label: "Stems at the final count" })),
};

/** What stands of a final count that was not taken. */
export const NO_FINAL_COUNT = { finalOn: null, finalPieces: [], finalStems: null };

/** How many days before an event the farm wants its final count. */
export const FINAL_COUNT_HABIT = {
  finalCountDays: count({
    of: "days",
    unit: "days",
    least: 0,
    most: 365,
    absent: 28,
    heading: "final_count_days",
    label: "Final count due before the event",
    hint: "Three to five weeks is common practice; a booking can have its own day. 0: it is never asked for.",
  }),
};
