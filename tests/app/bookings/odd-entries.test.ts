import { describe, expect, test } from "vitest";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import type { BookingDraft } from "#lib/domain/records/booking";
import { oddEntries } from "../../../app/bookings/editor/odd-entries";
import { booking, day } from "../../small-farm";

const recipes = DEFAULT_RECIPES.map((recipe, index) => ({ ...recipe, id: index + 1 }));
const idOf = (name: string) => recipes.find((recipe) => recipe.name === name)?.id ?? 0;
const today = day("2027-06-01");
const draft = (part: Partial<BookingDraft>): BookingDraft => ({
  ...booking({ id: 1 }),
  eventOn: day("2027-09-11"),
  status: "confirmed",
  pieces: [{ recipeId: idOf("Bridal bouquet"), pieceCount: 1, colours: [] }],
  stemLines: [],
  ...part,
});
const told = (part: Partial<BookingDraft>, before?: ReturnType<typeof booking>) =>
  oddEntries(draft(part), { recipes, before, today }).map(({ place, message }) => `${place}: ${message}`);

describe("what a booking can hardly mean is met with a word", () => {
  test("two and a half bouquets", () => {
    expect(told({ pieces: [{ recipeId: idOf("Bridal bouquet"), pieceCount: 2.5, colours: [] }] })).toEqual([
      "pieces[0].pieceCount: 2.5 of bridal bouquet: pieces are whole, write 3",
    ]);
  });

  test("but two and a half feet of garland are meant", () => {
    const garland = recipes.find(({ unit }) => unit !== "piece");
    expect(garland).toBeDefined();
    expect(told({ pieces: [{ recipeId: garland?.id ?? 0, pieceCount: 2.5, colours: [] }] })).toEqual([]);
  });

  test("an event of 2019, unless it stood there already", () => {
    const eventOn = day("2019-06-15");
    expect(told({ eventOn })).toEqual(["eventOn: Saturday 15 June 2019 is years away from today: check the year"]);
    expect(told({ eventOn }, booking({ id: 1, eventOn }))).toEqual([]);
  });

  test("a colour that is wanted and not wanted, wherever it is wanted", () => {
    const pieces = [{ recipeId: idOf("Bridal bouquet"), pieceCount: 1, colours: ["cream" as const, "white" as const] }];
    expect(
      told({ palette: ["white", "blush"], alternativeColours: ["peach"], unacceptableColours: ["white"], pieces }),
    ).toEqual([
      "palette: white stands here and among the colours not wanted: take it out of one",
      "pieces[0].colours: white stands here and among the colours not wanted: take it out of one",
    ]);
    expect(told({ palette: ["blush"], unacceptableColours: ["white"] })).toEqual([]);
  });

  test("a held or confirmed booking that asks for nothing; an enquiry may wait", () => {
    for (const status of ["held", "confirmed"] as const) expect(told({ status, pieces: [] })).toHaveLength(1);
    expect(told({ status: "enquiry", pieces: [] })).toEqual([]);
  });
});
