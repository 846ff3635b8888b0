import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { inShort } from "#lib/domain/day";
import { placeOf } from "#lib/plan/road/pick-list";
import { bookingsOfLines, pickRows } from "#lib/plan/road/pick-rows";
import { byPickingDay } from "#lib/plan/road/pick-sheets";
import { forWhomInWords } from "#lib/plan/words/frost-words";
import { provenPlan } from "../../proven-plan";

test("a row says whose stems it cuts, and nobody who has the variety from another bed that day", () => {
  const { pickList } = provenPlan(seededFarm(5, { bedCount: 20, bookingCount: 12 }), 2027);
  let onlyOfOthers = 0;
  for (const { lines } of byPickingDay(pickList)) {
    const all = bookingsOfLines(lines);
    for (const row of pickRows(lines)) {
      const ofVariety = lines.filter(({ variety }) => variety.id === row.variety.id);
      const here = ofVariety.filter(({ stand }) => placeOf(stand) === placeOf(row.stand));
      const named = new Set(here.map(({ booking }) => `${booking.client}, ${inShort(booking.eventOn)}`));
      expect(new Set(forWhomInWords(row, all).split("; "))).toEqual(named);
      if (new Set(ofVariety.map(({ booking }) => booking.id)).size > named.size) onlyOfOthers++;
    }
  }
  expect(onlyOfOthers).toBeGreaterThan(0);
});
