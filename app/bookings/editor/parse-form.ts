import { z } from "zod";
import { type BookingDraft, bookingDraftSchema } from "#lib/domain/booking";
import { type Parsed, type Problem, problemsOf } from "#lib/domain/problem";
import { readNumber } from "#lib/domain/read-number";
import { COLOURS, ROLES, STATUSES } from "#lib/domain/words";

/** More lines than any booking has, and more letters than it takes to name every colour; the answer stays quick whatever is sent. */
const MOST_LINES = 500;
const MOST_COLOUR_LETTERS = 400;

const text = z.string();
const colours = text.max(MOST_COLOUR_LETTERS, `name each colour once: at most ${MOST_COLOUR_LETTERS} letters`);
const linesOf = <T extends z.ZodType>(line: T) => z.array(line).max(MOST_LINES, `at most ${MOST_LINES} lines`);
const formSchema = z.object({
  client: text,
  status: z.enum(STATUSES),
  eventOn: text,
  palette: colours,
  sparePercent: text,
  unacceptableCropIds: linesOf(z.int()),
  pieces: linesOf(z.object({ recipeId: z.int(), pieceCount: text, colours })),
  stemLines: linesOf(
    z.object({
      role: z.enum(ROLES),
      cropId: z.int().nullable(),
      cropOnly: z.boolean(),
      colours,
      stemCount: text,
    }),
  ),
  note: text,
});

/** A number as typed; text that is none, and nothing, are passed on for the schema to refuse. */
function numberIn(typed: string): number | string {
  const reading = readNumber(typed.trim());
  return reading.ok ? reading.value : typed;
}

const coloursIn = (typed: string): string[] =>
  typed
    .split(/[,/;]+/)
    .map((word) => word.trim().toLowerCase())
    .filter((word) => word !== "");

const isColour = (word: string): boolean => COLOURS.some((colour) => colour === word);

/** The colours typed, or the first that is none: one problem a field, however many words are wrong. */
function knownColours(typed: string): string[] {
  const words = coloursIn(typed);
  const unknown = words.find((word) => !isColour(word));
  return unknown === undefined ? words : [unknown];
}

/** "no colour called “mauve”: choose from white, cream, …" in place of zod's own words. */
const colourMessage = (typed: string): string => {
  const unknown = coloursIn(typed).filter((word) => !isColour(word));
  return `no colour called ${unknown.map((word) => `“${word}”`).join(", ")}: choose from ${COLOURS.join(", ")}`;
};

/**
 * Parses what the booking form holds. Every problem at once; its place is the path of the field in the form
 * ("pieces[2].pieceCount", "sparePercent"), so that it can stand beside it. A field has one problem at most.
 */
export function parseBookingForm(unknownForm: unknown): Parsed<BookingDraft> {
  const form = formSchema.safeParse(unknownForm);
  if (!form.success) return { ok: false, problems: problemsOf(form.error) };
  const { sparePercent, ...typed } = form.data;
  const spare = numberIn(sparePercent);
  const draft = bookingDraftSchema.safeParse({
    ...typed,
    palette: knownColours(typed.palette),
    spareShare: typeof spare === "number" ? spare / 100 : spare,
    pieces: typed.pieces.map((piece) => ({
      ...piece,
      pieceCount: numberIn(piece.pieceCount),
      colours: knownColours(piece.colours),
    })),
    stemLines: typed.stemLines.map((line) => ({
      ...line,
      stemCount: numberIn(line.stemCount),
      colours: knownColours(line.colours),
    })),
  });
  if (draft.success) return { ok: true, parsed: draft.data };
  const problems = new Map<string, Problem>();
  for (const problem of problemsOf(draft.error)) {
    const told = inWordsOfForm(typed, problem);
    if (!problems.has(told.place)) problems.set(told.place, told);
  }
  return { ok: false, problems: [...problems.values()] };
}

/** A problem of the draft with its place in the form, and words for what was typed there. */
function inWordsOfForm(typed: unknown, { place, message }: Problem): Problem {
  if (place.startsWith("spareShare"))
    return { place: "sparePercent", message: "write spare as a percentage from 0 to 100" };
  const typedCount = /Count$/.test(place) ? String(at(typed, place)).trim() : "";
  const reading = readNumber(typedCount);
  if (typedCount !== "" && !reading.ok) return { place, message: reading.message };
  const [, field] = /^(.*(?:palette|colours))\[\d+\]$/.exec(place) ?? [];
  return field === undefined ? { place, message } : { place: field, message: colourMessage(String(at(typed, field))) };
}

/** What stands at a path such as "pieces[1].colours". */
function at(form: unknown, path: string): unknown {
  return path
    .split(/[.[\]]+/)
    .filter((step) => step !== "")
    .reduce<unknown>((inside, step) => (inside as Record<string, unknown> | undefined)?.[step], form);
}
