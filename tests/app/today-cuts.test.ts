import { expect, test } from "vitest";
import { talliesOn } from "#db/read/tallies";
import { removeCuts } from "#db/write/cuts";
import { correct } from "../../app/today/correct-row";
import { correctedRow, tallyOfRow } from "../../app/today/cut-values";
import { takeTally } from "../../app/today/take-tally";
import { FormValues } from "../../app/ui/form-values";
import { done, kept, refused, withFarm } from "../db/kept-farm";
import { formOf } from "./form-of";

const ROW = { cutOn: "2027-06-10", bedId: "1", varietyId: "1", seenStems: "0", seenRevision: "1" };

const rowOf = (fields: Record<string, string>) => new FormValues(formOf({ ...ROW, ...fields }));

/** What a browser without scripts sends of a row. */
function tally(asked: readonly (readonly [number, number])[], stemsCut: string, more: Record<string, string> = {}) {
  const read = tallyOfRow(rowOf({ asked: JSON.stringify(asked), stemsCut, ...more }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.parsed;
}

test("a row that a standing order shares is recorded for its wedding, and the order's part without a booking", () =>
  withFarm((database) => {
    const asked = [
      [2, 5],
      [-7, 4],
    ] as const;
    done(takeTally(database, tally(asked, "9"), kept(database)));
    expect(kept(database).cuts.map(({ bookingId, stemsCut, stemsAsked }) => [bookingId, stemsCut, stemsAsked])).toEqual(
      [
        [2, 5, 5],
        [null, 4, 4],
      ],
    );
  }));

test("none left is nothing, whatever number stands there; a number that is none is refused at its field", () => {
  expect(tally([[2, 5]], "5", { none: "yes" }).stemsCut).toBe(0);
  const read = tallyOfRow(rowOf({ asked: "[[2,5]]", stemsCut: "some" }));
  expect(!read.ok && read.problems.map(({ place }) => place)).toEqual(["stemsCut"]);
});

test("stems counted for a booking that has gone meanwhile are nobody's, and are not lost", () =>
  withFarm((database) => {
    done(takeTally(database, tally([[99, 5]], "5"), kept(database)));
    expect(kept(database).cuts.map(({ bookingId, stemsCut }) => [bookingId, stemsCut])).toEqual([[null, 5]]);
  }));

test("[T10] a correction shares the row anew: of nine for two weddings, six are five and one", () =>
  withFarm((database) => {
    const asked = [
      [1, 5],
      [2, 4],
    ] as const;
    done(takeTally(database, tally(asked, "9"), kept(database)));
    const read = correctedRow(rowOf({ stemsCut: "6" }));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const corrected = done(correct(database, read.parsed, kept(database)));
    expect(corrected.title).toBe("corrected Variety 1 in bed D1: 9 is now 6 stems");
    expect(kept(database).cuts.map(({ bookingId, stemsCut, stemsAsked }) => [bookingId, stemsCut, stemsAsked])).toEqual(
      [
        [1, 5, 5],
        [2, 1, 4],
      ],
    );
    expect(talliesOn(database, ROW.cutOn).map(({ stemsCut, isApart }) => [stemsCut, isApart])).toEqual([[9, false]]);
  }));

test("a row that nobody has recorded cannot be corrected", () =>
  withFarm((database) => {
    const read = correctedRow(rowOf({ stemsCut: "6" }));
    expect(read.ok && refused(correct(database, read.parsed, kept(database)))).toEqual([
      "stemsCut: nothing is recorded here any more: record it anew",
    ]);
  }));

test("[T14] a row is left with the number of its list untouched, or its rest with a number; a correction and a later count keep it so", () =>
  withFarm((database) => {
    const left = { rest: "yes", listed: "9" };
    expect(tally([[2, 9]], "9", left)).toMatchObject({ stemsCut: 0, restStands: true });
    expect(tally([[2, 9]], "4", left)).toMatchObject({ stemsCut: 4, restStands: true });
    expect(tally([[2, 9]], "9")).not.toHaveProperty("restStands");
    const asked = [[2, 9]] as const;
    const write = done(takeTally(database, tally(asked, "4", left), kept(database)));
    expect(write.title).toBe(
      "recorded 4 stems cut on Thursday 10 June 2027, the rest left to stand: Variety 1 in bed D1",
    );
    const recorded = () =>
      kept(database).cuts.map(({ stemsCut, stemsAsked, restStands }) => [stemsCut, stemsAsked, restStands]);
    expect(recorded()).toEqual([[4, 9, true]]);
    const read = correctedRow(rowOf({ stemsCut: "5" }));
    done(correct(database, read.ok ? read.parsed : never(), kept(database)));
    expect(recorded()).toEqual([[5, 9, true]]);
    done(takeTally(database, tally(asked, "2", { seenStems: "5", seenRevision: "999" }), kept(database)));
    expect(recorded()).toEqual([[7, 9, true]]);
    done(removeCuts(database, [kept(database).cuts[0].id]));
    expect(recorded()).toEqual([]);
  }));

const never = (): never => {
  throw new Error("refused");
};
