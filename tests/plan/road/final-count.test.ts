import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, daysBetween } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { FINAL_COUNT } from "#lib/domain/records/final-count";
import { finalCountOf, finalCountsDue, finalDueOn, sinceFinal } from "#lib/plan/road/final-count";
import { needs } from "#lib/plan/road/needs";
import { countsDueInWords, dueInWords, sinceFinalInWords } from "#lib/plan/words/final-count-words";
import { booking, day, farm, focal, recipe } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";

const RECIPES = [recipe({ id: 1, name: "Bouquet" }), recipe({ id: 2, name: "Arch" })];
const pieces = (...counts: [recipeId: number, pieceCount: number][]): Booking["pieces"] =>
  counts.map(([recipeId, pieceCount]) => ({ recipeId, pieceCount, colours: [] }));
const TOLD = booking({ id: 1, pieces: pieces([1, 6], [2, 1]), stemLines: focal(10), spareShare: 0.2 });
const taken = (row: Booking, on = "2027-05-12"): Booking => ({ ...row, ...finalCountOf(row, RECIPES, day(on)) });

describe("six bouquets, an arch and ten loose stems, counted as final on 12 May", () => {
  const counted = taken(TOLD);

  test("[T13] are written down as such, with their 54 stems: 45 and a fifth more", () => {
    expect(counted).toMatchObject({
      finalOn: "2027-05-12",
      finalPieces: [
        { count: 6, what: "Bouquet" },
        { count: 1, what: "Arch" },
        { count: 10, what: "focal stems, loose" },
      ],
      finalStems: 54,
    });
    const since = sinceFinal(counted, RECIPES);
    expect(since).toEqual({ finalOn: "2027-05-12", changed: [], moreStems: 0 });
    expect(since && sinceFinalInWords(since)).toBe("As at the final count of 12 May.");
  });

  test("[T13] a bouquet more is told with its six stems, an arch that went as gone", () => {
    const changed = sinceFinal({ ...counted, pieces: pieces([1, 7]) }, RECIPES);
    expect(changed && sinceFinalInWords(changed)).toBe(
      "Since the final count of 12 May: Bouquet 6 → 7; Arch 1 → none; as many stems.",
    );
    const more = sinceFinal({ ...counted, pieces: pieces([1, 4], [2, 1], [1, 3]) }, RECIPES);
    expect(more && sinceFinalInWords(more)).toBe("Since the final count of 12 May: Bouquet 6 → 7; 6 stems more.");
  });

  test("[T13] another recipe or spare is told in stems, since the pieces are the same", () => {
    const leaner = RECIPES.map((row) => ({ ...row, lines: [{ ...row.lines[0], stemsPerPiece: 4 }] }));
    const since = sinceFinal(counted, leaner);
    expect(since && sinceFinalInWords(since)).toBe(
      "The pieces are those of the final count of 12 May; by recipe or spare they ask for 8 stems fewer.",
    );
  });

  test("[T13] one that came without its stems is told in pieces alone", () => {
    const since = sinceFinal({ ...counted, finalStems: null, pieces: pieces([1, 7], [2, 1]) }, RECIPES);
    expect(since && sinceFinalInWords(since)).toBe("Since the final count of 12 May: Bouquet 6 → 7.");
  });
});

test("[T13] a count is due from 28 days before the event until it has passed, for what is held or confirmed and not lapsed", () => {
  const due = (given: Partial<Booking>, today: string, finalCountDays = 28) =>
    finalCountsDue([{ ...TOLD, ...given }], farm({ finalCountDays }), day(today)).length === 1;
  expect(["2027-05-14", "2027-05-15", "2027-06-12", "2027-06-13"].map((today) => due({}, today))).toEqual([
    false,
    true,
    true,
    false,
  ]);
  expect(due({}, "2027-06-01", 0)).toBe(false);
  expect(due({ finalDueOn: day("2027-06-01") }, "2027-05-31")).toBe(false);
  expect(due({ finalDueOn: day("2027-06-01") }, "2027-06-01", 0)).toBe(true);
  expect(due({ status: "enquiry" }, "2027-06-01")).toBe(false);
  expect(due({ status: "cancelled" }, "2027-06-01")).toBe(false);
  expect(due({ status: "held", lapsesAfter: day("2027-05-20") }, "2027-06-01")).toBe(false);
  expect(due(finalCountOf(TOLD, RECIPES, day("2027-05-16")), "2027-06-01")).toBe(false);
});

test("[T13] on any farm the stems are the sum of the needs, those of now less those of then, and no plan changes", () => {
  fc.assert(
    fc.property(anyFarm, fc.integer({ min: 0, max: 400 }), fc.integer({ min: 1, max: 4 }), (given, ago, times) => {
      const asked = (row: Booking) =>
        needs({ ...given, bookings: [{ ...row, status: "confirmed" }] }, Number(row.eventOn.slice(0, 4)))
          .map(({ stems }) => stems)
          .reduce((sum, stems) => sum + stems, 0);
      for (const row of given.bookings) {
        const on = addDays(row.eventOn, -ago);
        const counted = { ...row, ...finalCountOf(row, given.recipes, on) };
        expect(counted.finalStems).toBe(asked(row));
        expect(sinceFinal(counted, given.recipes)).toEqual({ finalOn: on, changed: [], moreStems: 0 });
        const grown = {
          ...counted,
          pieces: row.pieces.map((piece) => ({ ...piece, pieceCount: piece.pieceCount * times })),
        };
        const since = sinceFinal(grown, given.recipes);
        expect(since?.moreStems).toBe(asked(grown) - asked(row));
        if (times > 1)
          expect(new Set(since?.changed.map(({ what }) => what))).toEqual(
            new Set(row.pieces.map(({ recipeId }) => given.recipes.find(({ id }) => id === recipeId)?.name)),
          );
        const due = finalDueOn(row, given.farm);
        expect(due && daysBetween(due, row.eventOn)).toBe(given.farm.finalCountDays || null);
        expect(needs({ ...given, bookings: [counted] }, 2027)).toEqual(
          needs({ ...given, bookings: [row] }, 2027).map((need) => ({ ...need, booking: counted })),
        );
      }
    }),
    anySeed,
  );
});

test("a final count in a cell reads back, whatever the pieces are called, and one that is none says how it is written", () => {
  const { kind } = FINAL_COUNT.finalPieces;
  const odd = [
    { count: 1.5, what: "Arch / two\\sided, 5 feet" },
    { count: 1200, what: "Bouquet" },
  ];
  for (const mark of ["point", "comma"] as const)
    expect(kind.read(kind.write(odd, mark), { decimalMark: mark })).toEqual({ ok: true, value: odd });
  expect(kind.read("Bouquet")).toEqual({
    ok: false,
    message: '"Bouquet" is no count of pieces: write as in "6 Bouquet"',
  });
});

test("counts that are due are named while they are few", () => {
  const named = (...clients: string[]) => clients.map((client) => ({ client }));
  expect(countsDueInWords(named("Ivy"))).toBe("The final count of Ivy is due");
  expect(countsDueInWords(named("Ivy", "Ash"))).toBe("The final counts of Ivy and Ash are due");
  expect(countsDueInWords(named("a", "b", "c", "d"))).toBe("4 final counts are due");
  const on = (today: string) => dueInWords(day("2027-05-15"), day(today));
  expect([on("2027-05-14"), on("2027-05-15"), on("2027-05-16")]).toEqual([
    "is due on Saturday 15 May 2027",
    "is due today",
    "is due since Saturday 15 May 2027",
  ]);
});
