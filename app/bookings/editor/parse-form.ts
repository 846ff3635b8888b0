import { z } from "zod";
import { type Parsed, problemsOf } from "#lib/domain/problem";
import { BOOKING, type BookingDraft, bookingFactsSchema } from "#lib/domain/records/booking";
import { NEVER_LARGER } from "#lib/domain/records/earlier-ask";
import { NO_FINAL_COUNT } from "#lib/domain/records/final-count";
import { type Manner, readForm, type Typed } from "#lib/domain/records/form";
import { PIECE } from "#lib/domain/records/piece";
import { STEM_LINE, stemLineSchema } from "#lib/domain/records/stem-line";

/** More lines than any booking has, and more letters than it takes to name every colour; the answer stays quick whatever is sent. */
const MOST_LINES = 500;
const MOST_COLOUR_LETTERS = 400;

const text = z.string();
const colours = text.max(MOST_COLOUR_LETTERS, `name each colour once: at most ${MOST_COLOUR_LETTERS} letters`);
const linesOf = <T extends z.ZodType>(line: T) => z.array(line).max(MOST_LINES, `at most ${MOST_LINES} lines`);
const formSchema = z.object({
  client: text,
  status: text,
  lapsesAfter: text.default(""),
  eventOn: text,
  palette: colours,
  alternativeColours: colours,
  unacceptableColours: colours,
  spareShare: text,
  priceCents: text.default(""),
  unacceptableCropIds: linesOf(z.int()),
  pieces: linesOf(z.object({ recipeId: z.int(), pieceCount: text, colours })),
  stemLines: linesOf(
    z.object({
      role: text,
      cropId: z.int().nullable(),
      cropOnly: z.boolean(),
      asks: text.default(""),
      colours,
      stemCount: text,
    }),
  ),
  leadDays: text.default(""),
  designDays: text.default(""),
  deliverDays: text.default(""),
  takenOn: text,
  finalDueOn: text.default(""),
  note: text,
});

/**
 * Parses what the booking form holds; what was promised, and a final count, do not stand in it. Every problem at once; its place is the path of the field in the form
 * ("pieces[2].pieceCount", "spareShare"), so that it can stand beside it.
 */
export function parseBookingForm(unknownForm: unknown, manner: Manner): Parsed<BookingDraft> {
  const form = formSchema.safeParse(unknownForm);
  if (!form.success) return { ok: false, problems: problemsOf(form.error) };
  const { unacceptableCropIds, ...typed } = form.data;
  const booking = readForm(BOOKING, typedIn(typed), manner, { schema: bookingFactsSchema });
  const pieces = typed.pieces.map((line, index) =>
    readForm(PIECE, typedIn(line, `pieces[${index}].`), manner, { root: `pieces[${index}].` }),
  );
  const stemLines = typed.stemLines.map((line, index) => {
    const root = `stemLines[${index}].`;
    return readForm(STEM_LINE, typedIn(line, root), manner, { root, schema: stemLineSchema });
  });
  const problems = [booking, ...pieces, ...stemLines].flatMap((read) => (read.ok ? [] : read.problems));
  if (!booking.ok || problems.length) return { ok: false, problems };
  // What cannot lapse does not show its day.
  const { status } = booking.parsed;
  const lapsesAfter = status === "enquiry" || status === "held" ? booking.parsed.lapsesAfter : null;
  return {
    ok: true,
    parsed: {
      ...booking.parsed,
      ...NO_FINAL_COUNT,
      ...NEVER_LARGER,
      lapsesAfter,
      unacceptableCropIds,
      pieces: read(pieces),
      stemLines: read(stemLines),
      promises: [],
    },
  };
}

const read = <T>(lines: readonly Parsed<T>[]): T[] => lines.flatMap((line) => (line.ok ? [line.parsed] : []));

/** What stands in the form, by the names of its fields. */
const typedIn = (form: Readonly<Record<string, unknown>>, root = ""): Typed => ({
  getAll: (name) => {
    const value = form[name.slice(root.length)];
    if (typeof value === "boolean") return value ? ["yes"] : [];
    return value === null || value === undefined ? [] : [String(value)];
  },
});
