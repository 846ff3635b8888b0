import { expect, test } from "vitest";
import { farmBefore, hasChangedSince } from "#db/journal/farm-before";
import { undoChange } from "#db/journal/journal";
import { removeBed } from "#db/write/beds";
import { removeBooking } from "#db/write/bookings";
import { removeCuts } from "#db/write/cuts";
import { removePlanting } from "#db/write/plantings";
import { day } from "../small-farm";
import { changeOf, done, kept, withFarm } from "./kept-farm";
import { recordCuts } from "./record-cuts";

const MOMENT = "2027-06-10 00:00:00";

test("the farm as it stood at a moment is the one before every change made since, undone ones too; the farm itself stays as it is", () => {
  withFarm((database) => {
    const before = kept(database);
    database.$client.prepare("UPDATE change SET made_at = '2027-06-09 23:59:59'").run();
    const later = () =>
      database.$client.prepare("UPDATE change SET made_at = ? WHERE made_at <> '2027-06-09 23:59:59'").run(MOMENT);
    const cut = {
      ...{ cutOn: day("2027-06-10"), bedId: 1, varietyId: 1, bookingId: 2 },
      ...{ stemsCut: 9, stemsAsked: 9, goodStems: null, restStands: false },
    };
    const [id] = done(recordCuts(database, [cut])).result;
    done(recordCuts(database, [{ ...cut, stemsCut: 7 }]));
    done(removeCuts(database, [id]));
    done(removePlanting(database, 2));
    const gone = changeOf(removeBed(database, 2));
    done(removeBooking(database, 2));
    expect(undoChange(database, gone).ok).toBe(true);
    later();
    const now = kept(database);
    expect(farmBefore(database, MOMENT)).toEqual(before);
    expect(kept(database)).toEqual(now);
    expect(farmBefore(database, "2027-06-11 00:00:00")).toEqual(now);
    expect(hasChangedSince(database, MOMENT)).toBe(true);
    expect(hasChangedSince(database, "2027-06-11 00:00:00")).toBe(false);
  });
});

test("where more was written since than is kept, how the farm stood is not known", () => {
  withFarm((database) => {
    const cut = {
      ...{ cutOn: day("2027-06-10"), bedId: 1, varietyId: 1, bookingId: 2 },
      ...{ stemsAsked: 9, goodStems: null, restStands: false },
    };
    for (let stems = 0; stems < 210; stems++) done(recordCuts(database, [{ ...cut, stemsCut: stems }]));
    expect(farmBefore(database, "2000-01-01 00:00:00")).toBe(null);
  });
});
