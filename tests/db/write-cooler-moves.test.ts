import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { addBooking, removeBooking } from "#db/write/bookings";
import { recordMoves, removeMove } from "#db/write/cooler-moves";
import { removeVariety } from "#db/write/crops";
import type { CoolerMoveDraft } from "#lib/domain/records/cooler-move";
import { booking, day } from "../small-farm";
import { done, kept, refused, withFarm } from "./kept-farm";

const move = (given: Partial<CoolerMoveDraft> = {}): CoolerMoveDraft => ({
  movedOn: day("2027-06-10"),
  varietyId: 1,
  cutOn: day("2027-06-08"),
  kind: "thrown away",
  stemCount: 5,
  bookingId: null,
  ...given,
});

test("two people who take stems out at once both count: the second record does not replace the first", () => {
  withFarm((database) => {
    expect(done(recordMoves(database, [move()])).title).toBe("threw 5 stems of Variety 1 away");
    done(recordMoves(database, [move()]));
    expect(kept(database).coolerMoves.map(({ stemCount }) => stemCount)).toEqual([5, 5]);
  });
});

test("many lots are thrown away as one change, which undo takes back; one record is taken back by itself", () => {
  withFarm((database) => {
    const before = kept(database);
    const all = done(recordMoves(database, [move(), move({ cutOn: day("2027-06-07"), stemCount: 7 })]));
    expect(all.title).toBe("threw 12 stems of 2 lots away");
    const [first] = all.result;
    expect(done(removeMove(database, first)).title).toBe("took back the record of Variety 1 thrown away on 2027-06-10");
    expect(kept(database).coolerMoves.length).toBe(1);
    const [ofOwner] = done(recordMoves(database, [move()])).result;
    expect(refused(removeMove(database, ofOwner, "Wren"))).toEqual([
      "id: somebody else recorded this: they or the owner can take it back",
    ]);
    const last = done(recordMoves(database, [move({ stemCount: 1 })]));
    expect(undoChange(database, last.changeId ?? 0).ok).toBe(true);
    expect(undoChange(database, all.changeId ?? 0).ok).toBe(false);
    expect({ ...kept(database), coolerMoves: [] }).toEqual(before);
  });
});

test("stems taken out for a booking keep it and their variety on the farm, and unknown ones are refused", () => {
  withFarm((database) => {
    const { id: _, ...draft } = booking({ id: 0, client: "Ash" });
    const { result: bookingId } = done(addBooking(database, draft));
    expect(done(recordMoves(database, [move({ kind: "taken out", bookingId })])).title).toBe(
      "took 5 stems of Variety 1 out of the cooler for Ash",
    );
    expect(refused(removeBooking(database, bookingId))[0]).toContain("1 move out of the cooler");
    expect(refused(removeVariety(database, 1))[0]).toContain("1 move out of the cooler");
    expect(refused(recordMoves(database, [move({ varietyId: 9 }), move({ bookingId: 99 })]))).toEqual([
      "moves[0].varietyId: this variety is not on the farm",
      "moves[1].bookingId: this booking is not on the farm",
    ]);
    expect(refused(removeMove(database, 99))).toEqual(["id: this move out of the cooler is not on the farm"]);
    expect(kept(database).coolerMoves.length).toBe(1);
  });
});
