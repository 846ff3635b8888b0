import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Booking } from "#lib/domain/records/booking";
import { checkSnapshot, type Snapshot } from "#lib/domain/snapshot";
import type { Colour } from "#lib/domain/words";
import { type Need, needs } from "#lib/plan/road/needs";
import { booking, day, focal, recipe, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";

const asked = (given: Partial<Snapshot>): Need[] => needs(snapshot(given), 2027);
const stemsOf = (list: readonly Need[]) => list.map(({ role, stems }) => [role, stems]);
const pieces = (recipeId: number, pieceCount: number) => ({ recipeId, pieceCount, colours: [] });

describe("how many stems a need is", () => {
  test("[N1] 6 pieces of 5 focal stems and 10 direct ones, with a tenth to spare, are 44", () => {
    const bookings = [booking({ id: 1, spareShare: 0.1, pieces: [pieces(1, 6)], stemLines: focal(10) })];
    expect(stemsOf(asked({ bookings }))).toEqual([["focal", 44]]);
  });

  test("[N1] rounded up once: 7 pieces of half a stem are 4, not 7", () => {
    const recipes = [recipe({ id: 1, lines: [{ role: "foliage", stemsPerPiece: 0.5, asks: [], colours: "any" }] })];
    expect(stemsOf(asked({ recipes, bookings: [booking({ id: 1, pieces: [pieces(1, 7)] })] }))).toEqual([
      ["foliage", 4],
    ]);
  });

  test("[N1] 100 stems with a tenth to spare are 110, though 100 × 1.1 is 110.00000000000001 to the machine", () => {
    expect(100 * 1.1).toBeGreaterThan(110);
    expect(stemsOf(asked({ bookings: [booking({ id: 1, spareShare: 0.1, stemLines: focal(100) })] }))).toEqual([
      ["focal", 110],
    ]);
  });
});

test("100,000 pieces of 10,000 stems, four times over, are refused in words: 4,000,000,000 stems do not fit in 32 bits", () => {
  const recipes = [recipe({ id: 1, lines: [{ role: "foliage", stemsPerPiece: 10_000, asks: [], colours: "any" }] })];
  const bookings = [booking({ id: 1, spareShare: 0, pieces: Array.from({ length: 4 }, () => pieces(1, 100_000)) })];
  expect(() => asked({ recipes, bookings })).toThrow(RangeError);
  const words =
    "asks for 4,000,000,000 stems, and a booking has at most 1,000,000: ask for fewer pieces, or part the booking";
  expect(() => asked({ recipes, bookings })).toThrow(words);
  expect(checkSnapshot(snapshot({ recipes, bookings }))).toEqual({
    ok: false,
    problems: [{ place: "bookings[1]", message: words }],
  });
});

describe("which lines make one need", () => {
  test("[N2] alike in role, crop and colours they are added up, whether from pieces or direct", () => {
    const bookings = [
      booking({
        id: 1,
        palette: ["blush"],
        pieces: [pieces(1, 2), pieces(1, 1)],
        stemLines: [...focal(3, { colours: ["blush"] }), ...focal(4, { colours: ["blush"] })],
      }),
    ];
    expect(stemsOf(asked({ bookings }))).toEqual([["focal", 10 + 5 + 3 + 4]]);
  });

  test("[N2] different in role, named crop, whether another will do, or colours they are five needs of five lines", () => {
    const line = focal(1)[0];
    const stemLines = [
      line,
      { ...line, role: "filler" as const },
      { ...line, cropId: 1 },
      { ...line, cropId: 1, cropOnly: true },
      { ...line, colours: ["cream" as const] },
    ];
    expect(asked({ bookings: [booking({ id: 1, stemLines })] })).toHaveLength(5);
  });

  test("[N2] two bookings never share a need", () => {
    expect(
      asked({ bookings: [booking({ id: 1, stemLines: focal(2) }), booking({ id: 2, stemLines: focal(2) })] }),
    ).toHaveLength(2);
  });

  test("a piece's own colours stand in place of the palette, and a line that takes any colour takes any", () => {
    const recipes = [
      recipe({
        id: 1,
        lines: [
          { role: "focal", stemsPerPiece: 1, asks: [], colours: "palette" },
          { role: "foliage", stemsPerPiece: 1, asks: [], colours: "any" },
        ],
      }),
    ];
    const own = { ...pieces(1, 1), colours: ["plum" as const] };
    const found = asked({
      recipes,
      bookings: [booking({ id: 1, palette: ["blush", "cream"], pieces: [own, pieces(1, 2)] })],
    });
    expect(found.map(({ role, colours, stems }) => [role, colours.join(" "), stems])).toEqual([
      ["focal", "blush cream", 2],
      ["focal", "plum", 1],
      ["foliage", "", 3],
    ]);
  });
});

describe("which colours a recipe's line takes", () => {
  const lines = (["palette", "palette-or-neutral", "any"] as const).map((colours) => ({
    role: "filler" as const,
    stemsPerPiece: 1,
    asks: [],
    colours,
  }));
  const coloursFor = (given: Partial<Booking>, ofPiece: readonly Colour[] = []) =>
    lines.map(
      (line) =>
        asked({
          recipes: [recipe({ id: 1, lines: [line] })],
          bookings: [booking({ id: 1, ...given, pieces: [{ ...pieces(1, 1), colours: [...ofPiece] }] })],
        })[0].colours.join(" ") || "any",
    );

  test("[N2] a coral wedding: coral alone, coral and the neutral four, or any", () => {
    expect(coloursFor({ palette: ["coral"] })).toEqual(["coral", "coral white cream green silver", "any"]);
  });

  test("[N2] what stands in the palette already is not named twice, and keeps its place", () => {
    expect(coloursFor({ palette: ["cream", "blush"] })[1]).toBe("cream blush white green silver");
  });

  test("[N2] the client's alternatives follow the palette and go before the neutral colours; a piece with colours of its own has none", () => {
    const named = { palette: ["coral" as const], alternativeColours: ["peach" as const, "cream" as const] };
    expect(coloursFor(named)).toEqual(["coral peach cream", "coral peach cream white green silver", "any"]);
    expect(coloursFor(named, ["plum"])).toEqual(["plum", "plum white cream green silver", "any"]);
  });

  test("[N2] no white: the neutral colours are cream, green and silver", () => {
    expect(coloursFor({ palette: ["coral"], unacceptableColours: ["white"] })[1]).toBe("coral cream green silver");
  });

  test("[N2] a booking without a palette takes any colour on every line", () => {
    expect(coloursFor({ alternativeColours: ["peach"] })).toEqual(["any", "any", "any"]);
  });
});

describe("which bookings ask", () => {
  test("[N3] a cancelled booking asks for nothing, any other does", () => {
    const statuses = ["enquiry", "held", "confirmed", "cancelled"] as const;
    const bookings = statuses.map((status, index) => booking({ id: index + 1, status, stemLines: focal(1) }));
    expect(asked({ bookings }).map(({ booking: { status } }) => status)).toEqual(["enquiry", "held", "confirmed"]);
  });

  test("an event of another year is not in this season; those that are stand in order of their day", () => {
    const on = (id: number, text: string) => booking({ id, eventOn: day(text), stemLines: focal(1) });
    const bookings = [on(1, "2027-09-04"), on(2, "2026-06-12"), on(3, "2027-06-12")];
    expect(asked({ bookings }).map(({ booking: { id } }) => id)).toEqual([3, 1]);
  });
});

test("[N1] [N2] [N3] in 200 farms the needs of a booking hold all its stems and its spare, and less than a stem over for each", () => {
  fc.assert(
    fc.property(anyFarm, (given) => {
      const found = needs(given, 2027);
      for (const row of given.bookings) {
        const mine = found.filter(({ booking: { id } }) => id === row.id);
        const fromPieces = row.pieces.reduce(
          (sum, { recipeId, pieceCount }) =>
            sum +
            (given.recipes.find(({ id }) => id === recipeId)?.lines ?? []).reduce(
              (all, line) => all + line.stemsPerPiece * pieceCount,
              0,
            ),
          0,
        );
        const direct = row.stemLines.reduce((sum, { stemCount }) => sum + stemCount, 0);
        const wanted = row.status === "cancelled" ? 0 : (fromPieces + direct) * (1 + row.spareShare);
        const stems = mine.reduce((sum, need) => sum + need.stems, 0);
        expect(stems).toBeGreaterThanOrEqual(wanted - 1e-6);
        expect(stems).toBeLessThan(wanted + mine.length + 1e-6);
        const keys = mine.map(({ role, cropId, cropOnly, asks, colours }) =>
          JSON.stringify([role, cropId, cropOnly, asks, colours]),
        );
        expect(new Set(keys).size).toBe(keys.length);
      }
    }),
    anySeed,
  );
});
