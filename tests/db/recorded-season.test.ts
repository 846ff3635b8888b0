import { expect, test } from "vitest";
import type { FarmDatabase } from "#db/client";
import { undoChange } from "#db/journal/journal";
import { recordBudLook } from "#db/write/bud-looks";
import { putCurve } from "#db/write/crops";
import { putFigures } from "#db/write/figures";
import { recordLoss } from "#db/write/losses";
import { carryPlantings } from "#db/write/plantings";
import { importRecords } from "#db/write/records";
import { recordReviews } from "#db/write/reviews";
import { carriedPlantings } from "#lib/plan/winter/carried-plantings";
import { day } from "../small-farm";
import { done, kept, withFarm } from "./kept-farm";
import { recordCuts } from "./record-cuts";

/** What was recorded of a season. */
const recorded = (database: FarmDatabase) => {
  const { cuts, budLooks, losses, reviews } = kept(database);
  return { cuts, budLooks, losses, reviews };
};

test("nothing recorded of a season is lost by carry-over, a change of curve, what it taught, an import, or the undoing of each", () => {
  withFarm((database) => {
    const place = { bedId: 1, varietyId: 1 };
    done(
      recordCuts(database, [
        {
          ...place,
          cutOn: day("2027-07-12"),
          bookingId: 1,
          stemsCut: 40,
          stemsAsked: 44,
          goodStems: 38,
          restStands: false,
        },
      ]),
    );
    done(recordBudLook(database, { ...place, lookedOn: day("2027-07-05"), sign: "late", daysToCut: 7 }));
    done(
      recordLoss(database, {
        ...{ ...place, seenOn: day("2027-08-02") },
        ...{ cause: "voles", plantsBefore: 40, plantsLeft: 30 },
      }),
    );
    done(
      recordReviews(database, [
        { bookingId: 1, role: "focal", plannedStems: 44, cutStems: 38, boughtStems: 6, thrownAwayStems: 3 },
      ]),
    );
    const season = recorded(database);
    const farm = kept(database);
    const [{ id, ...curve }] = farm.curves;
    const learned = [{ fromSeason: 2028, laterDays: 4, yieldFactor: 0.9 }];
    const writes = [
      () => carryPlantings(database, 2027, 2028, carriedPlantings(farm, 2027, 2028)),
      () => putCurve(database, { ...curve, stemsPerPlantByWeek: [9, 9] }),
      () => putFigures(database, "took", { crops: [], curves: [{ ...curve, id, learned }], recipes: [] }),
      () => importRecords(database, { beds: [{ ...farm.beds[0], name: "Another bed", id: undefined }] }),
    ];
    for (const write of writes) {
      const before = kept(database);
      const { changeId } = done<unknown>(write());
      expect(recorded(database)).toEqual(season);
      expect(kept(database)).not.toEqual(before);
      expect(undoChange(database, changeId ?? 0).ok).toBe(true);
      expect(kept(database)).toEqual(before);
    }
  });
});
