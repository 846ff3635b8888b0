import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { removeBed } from "#db/write/beds";
import { recordLoss, removeLoss } from "#db/write/losses";
import type { LossDraft } from "#lib/domain/records/loss";
import { day } from "../small-farm";
import { done, kept, refused, withFarm } from "./kept-farm";

const loss = (given: Partial<LossDraft> = {}): LossDraft => ({
  ...{ seenOn: day("2027-07-10"), bedId: 1, varietyId: 1 },
  ...{ cause: "voles", plantsBefore: 40, plantsLeft: 10 },
  ...given,
});

test("what is left is kept once for each day, bed, variety and cause: written again, it takes the place of the first", () => {
  withFarm((database) => {
    const written = done(recordLoss(database, loss()));
    expect(written.title).toBe("Variety 1 in bed D1, voles: 10 of 40 left");
    done(recordLoss(database, loss({ plantsLeft: 0 })));
    done(recordLoss(database, loss({ cause: "hail or wind", plantsLeft: 30 })));
    expect(kept(database).losses.map(({ cause, plantsLeft }) => [cause, plantsLeft])).toEqual([
      ["voles", 0],
      ["hail or wind", 30],
    ]);
    expect(kept(database).losses[0].id).toBe(written.result);
  });
});

test("what was written down is taken back, and undo brings it back; it goes with its bed", () => {
  withFarm((database) => {
    const { result } = done(recordLoss(database, loss()));
    const before = kept(database);
    const back = done(removeLoss(database, result));
    expect(back.title).toBe("took back Variety 1 in bed D1, voles");
    expect(kept(database).losses).toEqual([]);
    expect(undoChange(database, back.changeId ?? 0).ok).toBe(true);
    expect(kept(database)).toEqual(before);
    done(removeBed(database, 1));
    expect(kept(database).losses).toEqual([]);
  });
});

test("somebody else's is theirs and the owner's to take back", () => {
  withFarm((database) => {
    const { result } = done(recordLoss(database, loss()));
    expect(refused(removeLoss(database, result, "Wren"))).toEqual([
      "id: somebody else wrote this down: they or the owner can take it back",
    ]);
    expect(done(removeLoss(database, result)).result).toBe(result);
  });
});

test("a bed or variety that is not on the farm is refused, and nothing is written", () => {
  withFarm((database) => {
    expect(refused(recordLoss(database, loss({ bedId: 9 })))).toEqual(["bedId: this bed is not on the farm"]);
    expect(refused(recordLoss(database, loss({ varietyId: 9 })))).toEqual([
      "varietyId: this variety is not on the farm",
    ]);
    expect(kept(database).losses).toEqual([]);
  });
});
