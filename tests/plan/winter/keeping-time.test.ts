import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { addDays } from "#lib/domain/day";
import { replantedOn } from "#lib/plan/road/grown";
import { winterBeds } from "#lib/plan/winter/beds";
import { keepingTime } from "#lib/plan/winter/keeping-time";
import { day } from "../../small-farm";
import { SEASON, winterFarm } from "./farm";

const demo = demoSnapshot();
const beds = winterBeds(demo, 2027);
const on = (text: string, ofBeds = beds) => keepingTime(demo, ofBeds, 2027, day(text));

describe("when the choice of beds is the question", () => {
  test("[K11] on the demo farm, frost 18 October and the first bed replanted 29 April, from 20 September to 28 April", () => {
    expect([on("2026-06-10"), on("2026-09-19")]).toEqual(["ahead", "ahead"]);
    expect([on("2026-09-20"), on("2026-11-25"), on("2027-04-28")]).toEqual(["open", "open", "open"]);
    expect([on("2027-04-29"), on("2027-06-10"), on("2028-01-01")]).toEqual(["over", "over", "over"]);
  });

  test("without a candidate it ends on the last spring frost reckoned with", () => {
    const frost = day(`2027-${demo.farm.frost.lastSpringP50}`);
    expect(on(addDays(frost, -1), [])).toBe("open");
    expect(on(frost, [])).toBe("over");
  });

  test("as days pass it goes from ahead to open to over and never back, and no bed is replanted while it is open, on 20 farms", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const farm = winterFarm(seed, 20, 5);
      const candidates = winterBeds(farm, SEASON);
      const replanted = candidates.flatMap(({ plantings }) => plantings.map(({ dug }) => replantedOn(dug.planting)));
      let order = 0;
      for (let today = day(`${SEASON - 1}-01-01`); today < day(`${SEASON}-12-31`); today = addDays(today, 1)) {
        const time = keepingTime(farm, candidates, SEASON, today);
        const place = ["ahead", "open", "over"].indexOf(time);
        expect(place).toBeGreaterThanOrEqual(order);
        order = place;
        if (time === "open") expect(replanted.every((replantDay) => replantDay > today)).toBe(true);
      }
    }
  });
});
