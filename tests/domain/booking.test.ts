import { expect, test } from "vitest";
import { problemsOf } from "#lib/domain/problem";
import { bookingDraftSchema, bookingSchema } from "#lib/domain/records/booking";
import type { RecipeLine } from "#lib/domain/records/recipe";
import { recipeSchema } from "#lib/domain/records/recipe";
import { stemLineSchema } from "#lib/domain/records/stem-line";
import { booking, focal, recipe } from "../small-farm";

const problemsOfBooking = (given: object) => {
  const parsed = bookingSchema.safeParse(given);
  return parsed.success ? [] : problemsOf(parsed.error);
};

test("a booking is what it was once parsed", () => {
  const sound = booking({
    id: 4,
    palette: ["blush", "cream"],
    pieces: [{ recipeId: 1, pieceCount: 6, colours: [] }],
    stemLines: focal(40, { cropId: 2, cropOnly: true }),
  });
  expect(bookingSchema.parse(sound)).toEqual(sound);
});

test("a draft is a booking that has no id yet", () => {
  const { id: _, ...draft } = booking({ id: 4 });
  expect(bookingDraftSchema.parse(draft)).toEqual(draft);
});

test("no client, an unknown day, a colour nobody has and a spare above 100 % are four problems at once", () => {
  const wrong = { ...booking({ id: 1 }), client: "", eventOn: "2027-06-31", palette: ["mauve"], spareShare: 1.5 };
  expect(problemsOfBooking(wrong).map(({ place }) => place)).toEqual(["client", "eventOn", "palette[0]", "spareShare"]);
});

test("no other crop will do only where a crop is named", () => {
  const line = focal(10, { cropOnly: true })[0];
  expect(stemLineSchema.safeParse({ ...line, cropId: 3 }).success).toBe(true);
  const parsed = stemLineSchema.safeParse(line);
  expect(parsed.error && problemsOf(parsed.error)).toEqual([
    { place: "cropId", message: "name the crop, or allow others in its place" },
  ]);
});

test("a recipe may ask for part of a stem a piece, never for none", () => {
  const line = { role: "foliage", stemsPerPiece: 0.5, asks: [], colours: "any" } satisfies RecipeLine;
  expect(recipeSchema.safeParse(recipe({ id: 1, lines: [line] })).success).toBe(true);
  const parsed = recipeSchema.safeParse(recipe({ id: 1, lines: [line, { ...line, stemsPerPiece: 0 }] }));
  expect(parsed.error && problemsOf(parsed.error)).toEqual([
    { place: "lines[1].stemsPerPiece", message: "more than 0 stems" },
  ]);
});

test("a recipe without lines is none", () => {
  expect(recipeSchema.safeParse(recipe({ id: 1, lines: [] })).error?.issues[0].message).toBe(
    "a recipe needs at least one line of stems",
  );
});
