import { expect, test } from "vitest";
import type { FarmDatabase } from "#db/client";
import { revision, undoChange } from "#db/journal/journal";
import { talliesOn } from "#db/read/tallies";
import { removeCuts } from "#db/write/cuts";
import { correctRecord, settleTally } from "#db/write/tallies";
import { corrected, draft, ON, stems, sum, taken, tally } from "./counted-rows";
import { changeOf, done, kept, refused, withFarm } from "./kept-farm";

const settled = (database: FarmDatabase, id: number, isAdded: boolean) =>
  settleTally(database, id, isAdded, (recorded, { stemsCut }) => [draft(tally(), sum(recorded) + stemsCut)]);
test("[T10] two that counted nine and four in one bed from the same list make thirteen, and both are named", () =>
  withFarm((database) => {
    const seenRevision = revision(database);
    done(taken(database, tally({ seenRevision }), "Wren"));
    const second = done(taken(database, tally({ seenRevision, stemsCut: 4 }), "Robin"));
    expect(second.title).toBe("recorded 4 stems cut on Thursday 10 June 2027: Variety 1 in bed D1");
    expect(stems(database)).toBe(13);
    expect(talliesOn(database, ON).map(({ countedBy, stemsCut }) => [countedBy, stemsCut])).toEqual([
      ["Wren", 9],
      ["Robin", 4],
    ]);
  }));

test("[T10] a count that was made before the record was corrected changes nothing, and is added or left out when somebody says so", () => {
  for (const isAdded of [true, false])
    withFarm((database) => {
      const seenRevision = revision(database);
      done(taken(database, tally({ seenRevision }), "Wren"));
      done(corrected(database, 7));
      expect(done(taken(database, tally({ seenRevision, stemsCut: 4 }), "Robin")).result.isApart).toBe(true);
      expect(stems(database)).toBe(7);
      const [late] = talliesOn(database, ON).filter(({ isApart }) => isApart);
      expect(late).toMatchObject({ countedBy: "Robin", stemsCut: 4 });
      done(settled(database, late.id, isAdded));
      expect(stems(database)).toBe(isAdded ? 11 : 7);
      expect(talliesOn(database, ON).filter(({ isApart }) => isApart)).toEqual([]);
      expect(refused(settled(database, late.id, isAdded))).toEqual(["id: somebody has settled this count already"]);
    });
});

test("[T10] a count from a list that shows the correction is added to it", () =>
  withFarm((database) => {
    done(taken(database, tally({ seenRevision: revision(database) })));
    done(corrected(database, 7));
    done(taken(database, tally({ seenRevision: revision(database), seenStems: 7, stemsCut: 2 })));
    expect(stems(database)).toBe(9);
  }));

test("[T10] stems that somebody graded are a record of their own: a count is kept apart from them", () =>
  withFarm((database) => {
    done(taken(database, tally({ seenRevision: revision(database) })));
    done(correctRecord(database, tally(), 9, () => [{ ...draft(tally(), 9), goodStems: 8 }]));
    const late = done(taken(database, tally({ seenRevision: revision(database), seenStems: 9, stemsCut: 2 })));
    expect([late.result.isApart, stems(database)]).toEqual([true, 9]);
  }));

test("with the record of a row goes who counted it; undo brings both back, and the undo of a count takes it out alone", () =>
  withFarm((database) => {
    const seenRevision = revision(database);
    done(taken(database, tally({ seenRevision })));
    const second = done(taken(database, tally({ seenRevision, stemsCut: 4 })));
    const before = [kept(database), talliesOn(database, ON)];
    const back = done(
      removeCuts(
        database,
        kept(database).cuts.map(({ id }) => id),
      ),
    );
    expect([stems(database), talliesOn(database, ON)]).toEqual([0, []]);
    expect(undoChange(database, back.changeId ?? 0).ok).toBe(true);
    expect([kept(database), talliesOn(database, ON)]).toEqual(before);
    expect(undoChange(database, changeOf(second)).ok).toBe(true);
    expect([stems(database), talliesOn(database, ON).length]).toEqual([9, 1]);
  }));

test("a bed that is not on the farm is refused, and nothing is written", () =>
  withFarm((database) => {
    expect(refused(taken(database, tally({ bedId: 9 })))).toEqual(["bedId: this bed is not on the farm"]);
    expect([kept(database).cuts, talliesOn(database, ON)]).toEqual([[], []]);
  }));

test("whoever is not the owner corrects, settles and takes back only what they alone have counted", () =>
  withFarm((database) => {
    const seenRevision = revision(database);
    const byWren = (stemsCut: number) =>
      correctRecord(database, tally(), stemsCut, () => [draft(tally(), stemsCut)], "Wren");
    done(taken(database, tally({ seenRevision }), "Wren"));
    done(byWren(8));
    done(taken(database, tally({ seenRevision, stemsCut: 4 }), "Robin"));
    expect(refused(byWren(7))).toEqual(["stemsCut: somebody else has counted here too: the owner can say what holds"]);
    const [late] = talliesOn(database, ON).filter(({ isApart }) => isApart);
    expect(refused(settleTally(database, late.id, true, () => [], "Wren"))).toHaveLength(1);
    const ids = kept(database).cuts.map(({ id }) => id);
    expect(refused(removeCuts(database, ids, "Wren"))).toHaveLength(1);
    expect(stems(database)).toBe(8);
    done(removeCuts(database, ids));
  }));
