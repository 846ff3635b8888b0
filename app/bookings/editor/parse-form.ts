import { z } from "zod";
import { type BookingDraft, bookingDraftSchema } from "#lib/domain/booking";
import { type Parsed, problemsOf } from "#lib/domain/problem";
import { readNumber } from "#lib/domain/read-number";
import { COLOURS, ROLES, STATUSES } from "#lib/domain/words";

const text = z.string();
const formSchema = z.object({
  client: text,
  status: z.enum(STATUSES),
  eventOn: text,
  palette: text,
  sparePercent: text,
  unacceptableCropIds: z.array(z.int()),
  pieces: z.array(z.object({ recipeId: z.int(), pieceCount: text, colours: text })),
  stemLines: z.array(
    z.object({
      role: z.enum(ROLES),
      cropId: z.int().nullable(),
      cropOnly: z.boolean(),
      colours: text,
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

/** "no colour called “mauve”: choose from white, cream, …" in place of zod's own words. */
const colourMessage = (colours: readonly string[]) => {
  const unknown = colours.filter((word) => !COLOURS.some((colour) => colour === word));
  return `no colour called ${unknown.map((word) => `“${word}”`).join(", ")}: choose from ${COLOURS.join(", ")}`;
};

/**
 * Parses what the booking form holds. Every problem at once; its place is the path of the field in the form
 * ("pieces[2].pieceCount", "sparePercent"), so that it can stand beside it.
 */
export function parseBookingForm(unknownForm: unknown): Parsed<BookingDraft> {
  const form = formSchema.safeParse(unknownForm);
  if (!form.success) return { ok: false, problems: problemsOf(form.error) };
  const { sparePercent, ...typed } = form.data;
  const spare = numberIn(sparePercent);
  const draft = bookingDraftSchema.safeParse({
    ...typed,
    palette: coloursIn(typed.palette),
    spareShare: typeof spare === "number" ? spare / 100 : spare,
    pieces: typed.pieces.map((piece) => ({
      ...piece,
      pieceCount: numberIn(piece.pieceCount),
      colours: coloursIn(piece.colours),
    })),
    stemLines: typed.stemLines.map((line) => ({
      ...line,
      stemCount: numberIn(line.stemCount),
      colours: coloursIn(line.colours),
    })),
  });
  if (draft.success) return { ok: true, parsed: draft.data };
  const problems = problemsOf(draft.error).map(({ place, message }) => {
    if (place.startsWith("spareShare"))
      return { place: "sparePercent", message: "write spare as a percentage from 0 to 100" };
    const typedCount = /Count$/.test(place) ? String(at(typed, place)).trim() : "";
    const reading = readNumber(typedCount);
    if (typedCount !== "" && !reading.ok) return { place, message: reading.message };
    const colours = /^(.*(?:palette|colours))\[\d+\]$/.exec(place);
    return colours
      ? { place: colours[1], message: colourMessage(coloursIn(String(at(typed, colours[1])))) }
      : { place, message };
  });
  return {
    ok: false,
    problems: problems.filter(({ place }, index) => problems.findIndex((other) => other.place === place) === index),
  };
}

/** What stands at a path such as "pieces[1].colours". */
function at(form: unknown, path: string): unknown {
  return path
    .split(/[.[\]]+/)
    .filter((step) => step !== "")
    .reduce<unknown>((inside, step) => (inside as Record<string, unknown> | undefined)?.[step], form);
}
