import fc from "fast-check";
import { expect, test } from "vitest";
import { axisTo } from "../../app/ui/axis";

const PLACE = { topAt: 10, floorAt: 210, tickCount: 4 };

test("up to 174 stems the axis goes to 200 by 50s, its floor at the foot of the picture", () => {
  const { top, ticks, y } = axisTo(174, PLACE);
  expect([top, ticks]).toEqual([200, [0, 50, 100, 150, 200]]);
  expect([y(0), y(100), y(200)]).toEqual([210, 110, 10]);
});

test("what lies above the top is cut off there", () => {
  expect(axisTo(174, PLACE).y(5000)).toBe(10);
});

test("whatever is to show, the ticks are whole, rise evenly from 0 and end at the top, which holds it", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1_000_000 }), (most) => {
      const { top, ticks } = axisTo(most, PLACE);
      expect(top).toBeGreaterThanOrEqual(most);
      expect(ticks[0]).toBe(0);
      expect(ticks.at(-1)).toBe(top);
      for (const [index, tick] of ticks.entries()) expect(tick).toBe(index * ticks[1]);
      expect(ticks.every(Number.isInteger)).toBe(true);
    }),
    { seed: 7 },
  );
});
