import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { saving } from "#db/journal/saving";
import { removeBed } from "#db/write/beds";
import { removeBooking } from "#db/write/bookings";
import { removeVariety } from "#db/write/crops";
import { removeCuts } from "#db/write/cuts";
import { importRecords } from "#db/write/records";
import { adoptWhatIf } from "#db/write/what-ifs";
import type { CutDraft } from "#lib/domain/records/cut";
import { day } from "../small-farm";
import { done, kept, refused, withFarm } from "./kept-farm";
import { recordCuts } from "./record-cuts";

const cut = (given: Partial<CutDraft> = {}): CutDraft => ({
  cutOn: day("2027-06-10"),
  bedId: 1,
  varietyId: 1,
  bookingId: 1,
  stemsCut: 9,
  stemsAsked: 9,
  goodStems: null,
  restStands: false,
  ...given,
});

test("a cut is recorded once for each day, bed, variety and booking, however often it is saved", () => {
  withFarm((database) => {
    const [id] = done(recordCuts(database, [cut()])).result;
    done(recordCuts(database, [cut()]));
    done(recordCuts(database, [cut({ stemsCut: 7 }), cut({ bookingId: null, stemsAsked: 0, stemsCut: 2 })]));
    done(recordCuts(database, [cut({ bookingId: null, stemsAsked: 0, stemsCut: 3 })]));
    done(recordCuts(database, [cut({ bedId: 2, varietyId: 2 })]));
    expect(kept(database).cuts.map(({ bedId, bookingId, stemsCut }) => [bedId, bookingId, stemsCut])).toEqual([
      [1, 1, 7],
      [1, null, 3],
      [2, 1, 9],
    ]);
    expect(kept(database).cuts[0].id).toBe(id);
  });
});

test("a record is taken back, which says so, and undo brings it back", () => {
  withFarm((database) => {
    const recorded = done(recordCuts(database, [cut(), cut({ bookingId: 2, stemsCut: 4 })]));
    const before = kept(database);
    const taken = done(removeCuts(database, recorded.result));
    expect(taken.title).toBe("took back the record of 2 cuts");
    expect(kept(database).cuts).toEqual([]);
    expect(undoChange(database, taken.changeId ?? 0).ok).toBe(true);
    expect(kept(database)).toEqual(before);
  });
});

test("a cut of a bed, variety or booking that is not on the farm is refused, and nothing is written", () => {
  withFarm((database) => {
    const wrong = [cut(), cut({ bedId: 9 }), cut({ varietyId: 9 }), cut({ bookingId: 9 })];
    expect(refused(recordCuts(database, wrong))).toEqual([
      "cuts[1].bedId: this bed is not on the farm",
      "cuts[2].varietyId: this variety is not on the farm",
      "cuts[3].bookingId: this booking is not on the farm",
    ]);
    expect(refused(removeCuts(database, [1]))).toEqual(["cuts[0].id: this cut is not on the farm"]);
    expect(kept(database).cuts).toEqual([]);
  });
});

test("a bed, variety or booking stays while a cut names it, whichever way it would go", () => {
  withFarm((database) => {
    done(recordCuts(database, [cut({ varietyId: 2 })]));
    const because = "is named by 1 recorded cut: remove or change those first";
    expect(refused(removeBed(database, 1))).toEqual([`id: bed D1 ${because}`]);
    expect(refused(removeBooking(database, 1))).toEqual([`id: the booking of Client 1 ${because}`]);
    expect(refused(removeVariety(database, 2))[0]).toContain("1 recorded cut");
    const none = { added: [], changed: [], removedIds: [] };
    const adopted = { farm: null, plantings: none, bookings: { ...none, removedIds: [1] }, changedCurves: [] };
    expect(refused(adoptWhatIf(database, "adopted", adopted))).toEqual([
      `bookings[1].id: the booking of Client 1 ${because}`,
    ]);
    expect(kept(database).cuts).toHaveLength(1);
  });
});

test("cuts are imported under the names of bed, variety and booking, in the place of those that say the same", () => {
  withFarm((database) => {
    const named = { crop: "Crop 1", variety: "Variety 1", colour: "cream" as const, bed: "D1" };
    const { bedId: _, varietyId: __, bookingId: ___, ...plain } = cut();
    const [{ client, eventOn }] = kept(database).bookings;
    done(importRecords(database, { cuts: [{ ...plain, ...named, client, eventOn }] }));
    done(importRecords(database, { cuts: [{ ...plain, ...named, client, eventOn, stemsCut: 11 }] }));
    expect(kept(database).cuts).toEqual([{ id: 1, ...cut({ stemsCut: 11 }) }]);
    const nobody = { ...plain, ...named, client: "Nobody", eventOn };
    expect(refused(importRecords(database, { cuts: [nobody] }))).toEqual([
      `cuts[0].client: there is no booking of Nobody on ${eventOn}`,
    ]);
  });
});

test("whoever is not the owner takes back the cuts that they recorded last, and nobody else's", () => {
  withFarm((database) => {
    const save = (by: string | null) => ({ key: null, fingerprint: "", by, seenRevision: null });
    const record = (by: string | null, draft: CutDraft) =>
      done(saving(database, save(by), () => recordCuts(database, [draft]))).result;
    const ids = [record("Ada", cut()), record("Ben", cut({ bookingId: 2 })), record(null, cut({ bedId: 2 }))].flat();
    const notTheirs = "somebody else recorded this cut: they or the owner can take it back";
    expect(refused(removeCuts(database, ids, "Ada"))).toEqual([`cuts[1].id: ${notTheirs}`, `cuts[2].id: ${notTheirs}`]);
    expect(kept(database).cuts).toHaveLength(3);
    // Recorded again by another, it is the other's.
    record("Ben", cut({ stemsCut: 7 }));
    expect(refused(removeCuts(database, [ids[0]], "Ada"))).toEqual([`cuts[0].id: ${notTheirs}`]);
    done(removeCuts(database, [ids[0], ids[1]], "Ben"));
    // The owner takes back anybody's.
    done(removeCuts(database, [ids[2]]));
    expect(kept(database).cuts).toEqual([]);
  });
});
