import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { loadWhatIfs } from "#db/read/read";
import { type AdoptedRows, adoptWhatIf, putWhatIf, removeWhatIf } from "#db/write/what-ifs";
import type { WhatIf } from "#lib/domain/what-if";
import { booking, day, farm, monthDay, planting } from "../small-farm";
import { changeOf, done, kept, refused, withFarm } from "./kept-farm";

const NOTHING: AdoptedRows = {
  farm: null,
  plantings: { changed: [], removedIds: [], added: [] },
  bookings: { changed: [], removedIds: [], added: [] },
};

const EARLY: Omit<WhatIf, "id"> = {
  name: "Early frost, D1 kept",
  seasonYear: 2027,
  changes: [
    { kind: "frost-moved", firstFrost: monthDay("09-20") },
    { kind: "bed-kept", bedId: 1 },
    { kind: "season-shifted", days: -7, cropId: null },
    { kind: "planting-moved", plantingId: 1, bedId: null, plantedOn: day("2027-05-01") },
    { kind: "at-hand-set", resource: "hours", atHand: 12.5 },
  ],
};

const stored = (database: Parameters<typeof loadWhatIfs>[0]) => {
  const read = loadWhatIfs(database);
  return read.ok ? read.parsed : read.problems;
};

test("a what-if is kept with its changes in order, replaced by its id, and removed, and the farm is not touched", () => {
  withFarm((database) => {
    const before = kept(database);
    const id = done(putWhatIf(database, EARLY)).result;
    expect(stored(database)).toEqual([{ id, ...EARLY }]);
    done(putWhatIf(database, { ...EARLY, id, name: "Later", changes: EARLY.changes.toReversed() }));
    expect(stored(database)).toEqual([{ ...EARLY, id, name: "Later", changes: EARLY.changes.toReversed() }]);
    done(removeWhatIf(database, id));
    expect(stored(database)).toEqual([]);
    expect(kept(database)).toEqual(before);
  });
});

test("a what-if has its own name within a season", () => {
  withFarm((database) => {
    done(putWhatIf(database, EARLY));
    const other = done(putWhatIf(database, { ...EARLY, seasonYear: 2028 })).result;
    const why = ["name: a what-if called Early frost, D1 kept is there already: choose another name"];
    expect(refused(putWhatIf(database, EARLY))).toEqual(why);
    expect(refused(putWhatIf(database, { ...EARLY, id: other }))).toEqual(why);
    expect(refused(putWhatIf(database, { ...EARLY, id: 99 }))).toEqual(["id: this what-if is not on the farm"]);
    expect(refused(removeWhatIf(database, 99))).toEqual(["id: this what-if is not on the farm"]);
    expect(stored(database)).toHaveLength(2);
  });
});

test("adopting a what-if writes all of its rows as one change, and one undo takes them back", () => {
  withFarm((database) => {
    const before = kept(database);
    const [first, second] = before.plantings;
    const { id: _, ...added } = planting({ id: 0, bedId: 2, plantCount: 12 });
    const { id: __, ...asked } = booking({ id: 0, client: "Third" });
    const adopted = {
      farm: farm({ zone: "6a" }),
      plantings: { changed: [{ ...second, treatment: "tunnel" as const }], removedIds: [first.id], added: [added] },
      bookings: { changed: [{ ...before.bookings[1], eventOn: day("2027-07-03") }], removedIds: [1], added: [asked] },
    };
    const written = done(adoptWhatIf(database, "freed D1", adopted));
    expect(written.title).toBe("freed D1");
    const [plantingId, bookingId] = [written.result.plantingIds[0], written.result.bookingIds[0]];
    expect(kept(database)).toEqual({
      ...before,
      farm: farm({ zone: "6a" }),
      plantings: [
        { ...second, treatment: "tunnel" },
        { id: plantingId, ...added },
      ],
      bookings: [
        { ...before.bookings[1], eventOn: "2027-07-03" },
        { id: bookingId, ...asked },
      ],
    });
    expect(undoChange(database, written.changeId ?? 0).ok).toBe(true);
    expect(kept(database)).toEqual(before);
  });
});

test("a what-if over rows that are gone is refused whole, with every one of them", () => {
  withFarm((database) => {
    const before = kept(database);
    const lost: AdoptedRows = {
      farm: farm({ zone: "6a" }),
      plantings: { changed: [planting({ id: 98 }), planting({ id: 2, bedId: 97 })], removedIds: [99], added: [] },
      bookings: {
        changed: [booking({ id: 96 })],
        removedIds: [95],
        added: [booking({ id: 0, client: "Client 2" })],
      },
    };
    expect(refused(adoptWhatIf(database, "lost", lost))).toEqual([
      "plantings[99].id: this planting is not on the farm",
      "plantings[98].id: this planting is not on the farm",
      "plantings[2].bedId: this bed is not on the farm",
      "bookings[95].id: this booking is not on the farm",
      "bookings[96].id: this booking is not on the farm",
      "newBookings[0].client: a booking of Client 2 for Saturday 12 June 2027 is there already: change that one, or write another name",
    ]);
    const away = { ...planting({ id: 0 }), bedId: 97 };
    const added: AdoptedRows = { ...NOTHING, plantings: { ...NOTHING.plantings, added: [away] } };
    expect(refused(adoptWhatIf(database, "lost", added))).toEqual(["plantings[0].bedId: this bed is not on the farm"]);
    expect(kept(database)).toEqual(before);
    expect(done(adoptWhatIf(database, "nothing", NOTHING)).changeId).toBeNull();
    changeOf(adoptWhatIf(database, "settings", { ...NOTHING, farm: farm({ zone: "6a" }) }));
  });
});
