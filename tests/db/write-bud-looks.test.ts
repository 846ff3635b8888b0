import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { removeBed } from "#db/write/beds";
import { recordBudLook } from "#db/write/bud-looks";
import type { BudLookDraft } from "#lib/domain/records/bud-look";
import { day } from "../small-farm";
import { done, kept, refused, withFarm } from "./kept-farm";

const look = (given: Partial<BudLookDraft> = {}): BudLookDraft => ({
  lookedOn: day("2027-07-10"),
  bedId: 1,
  varietyId: 1,
  sign: "late",
  daysToCut: null,
  ...given,
});

test("a look is kept once for each day, bed and variety: noted again, it takes the place of the first", () => {
  withFarm((database) => {
    const noted = done(recordBudLook(database, look()));
    expect(noted.title).toBe("noted Variety 1 in bed D1: late");
    expect(done(recordBudLook(database, look({ daysToCut: 9 }))).title).toBe(
      "noted Variety 1 in bed D1: 9 days to the first cut",
    );
    done(recordBudLook(database, look({ lookedOn: day("2027-07-17"), sign: "first bloom" })));
    expect(kept(database).budLooks.map(({ lookedOn, sign, daysToCut }) => [lookedOn, sign, daysToCut])).toEqual([
      ["2027-07-10", "late", 9],
      ["2027-07-17", "first bloom", null],
    ]);
    expect(kept(database).budLooks[0].id).toBe(noted.result);
  });
});

test("looks go with their bed, and undo brings both back", () => {
  withFarm((database) => {
    done(recordBudLook(database, look()));
    const before = kept(database);
    const removed = done(removeBed(database, 1));
    expect(kept(database).budLooks).toEqual([]);
    expect(undoChange(database, removed.changeId ?? 0).ok).toBe(true);
    expect(kept(database)).toEqual(before);
  });
});

test("a look at a bed or variety that is not on the farm is refused, and nothing is written", () => {
  withFarm((database) => {
    expect(refused(recordBudLook(database, look({ bedId: 9 })))).toEqual(["bedId: this bed is not on the farm"]);
    expect(refused(recordBudLook(database, look({ varietyId: 9 })))).toEqual([
      "varietyId: this variety is not on the farm",
    ]);
    expect(kept(database).budLooks).toEqual([]);
  });
});
