import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { COLOURS } from "#lib/domain/words";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, farm, focal, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { hasWhatIsAsked } from "./asked-of-a-stem";

const sourced = (count: number) => ({ count, mark: "own" as const, source: null });
const boughtOn = (given: Partial<Snapshot>) => provenPlan(snapshot({ plantings: [], ...given }), 2027).buying;

describe("what to buy in", () => {
  test("[B1] 23 stems short in bunches of 10 at 2.50: 3 bunches, 30 stems, 7 over, 75.00, ordered 21 days before", () => {
    const [line] = boughtOn({
      crops: [crop({ id: 1, buyInCents: sourced(250) })],
      bookings: [booking({ id: 1, stemLines: focal(23) })],
    });
    const { bunchCount, boughtStems, leftOverStems, costCents, orderBy } = line;
    expect([bunchCount, boughtStems, leftOverStems, costCents]).toEqual([3, 30, 7, 7500]);
    expect(toDay(orderBy)).toBe("2027-05-22");
  });

  test("[B1] 20 stems short are two bunches and none over", () => {
    const [line] = boughtOn({ bookings: [booking({ id: 1, stemLines: focal(20) })] });
    expect([line.bunchCount, line.leftOverStems]).toEqual([2, 0]);
  });

  test("a gap for a named crop is priced and bunched as that crop", () => {
    const crops = [crop({ id: 1 }), crop({ id: 2, bunchStems: sourced(25), buyInCents: sourced(99.5) })];
    const [line] = boughtOn({ crops, bookings: [booking({ id: 1, stemLines: focal(3, { cropId: 2 }) })] });
    expect([line.crop.id, line.boughtStems, line.costCents]).toEqual([2, 25, 2488]);
  });

  test("a gap that no crop could fill is not bought: there is nothing to order", () => {
    expect(boughtOn({ bookings: [booking({ id: 1, stemLines: focal(3, { role: "line" }) })] })).toEqual([]);
  });

  test("orders stand by the day to order by", () => {
    const bookings = [
      booking({ id: 1, eventOn: day("2027-09-04"), stemLines: focal(1) }),
      booking({ id: 2, eventOn: day("2027-06-12"), stemLines: focal(1) }),
    ];
    const lines = boughtOn({ farm: farm({ orderDaysAhead: 10 }), bookings });
    expect(lines.map(({ orderBy }) => toDay(orderBy))).toEqual(["2027-06-02", "2027-08-25"]);
  });
});

test("[B1] in 200 farms every gap that some accepted crop can fill is bought in whole bunches, with less than a bunch over, at the price of its stems", () => {
  fc.assert(
    fc.property(anyFarm, (given) => {
      const { gaps, buying } = provenPlan(given, 2027);
      const has = <T>(list: readonly T[], one: T) => list.length === 0 || list.includes(one);
      const canBeBought = ({ need: { cropId, cropOnly, role, asks, booking, colours } }: (typeof gaps)[number]) => {
        const sold = (colours.length > 0 ? colours : COLOURS).filter(
          (colour) => !booking.unacceptableColours.includes(colour),
        );
        return given.crops.some(
          ({ id, roles, buyInColours, buyInMonths, ...crop }) =>
            hasWhatIsAsked(asks, crop) &&
            !booking.unacceptableCropIds.includes(id) &&
            (id === cropId || (!cropOnly && roles.includes(role))) &&
            has(buyInMonths, 6) &&
            sold.some((colour) => has(buyInColours, colour)),
        );
      };
      expect(buying.map(({ gap }) => gap.needIndex).sort((a, b) => a - b)).toEqual(
        gaps.filter(canBeBought).map(({ needIndex }) => needIndex),
      );
      for (const { gap, crop: bought, colour, bunchCount, boughtStems, leftOverStems, costCents } of buying) {
        expect(Number.isInteger(bunchCount)).toBe(true);
        expect(boughtStems).toBe(bunchCount * bought.bunchStems.count);
        expect(boughtStems - gap.shortStems).toBe(leftOverStems);
        expect(leftOverStems).toBeGreaterThanOrEqual(0);
        expect(leftOverStems).toBeLessThan(bought.bunchStems.count);
        expect(costCents).toBe(Math.round(boughtStems * bought.buyInCents.count));
        expect(bought.roles.includes(gap.need.role) || bought.id === gap.need.cropId).toBe(true);
        expect(gap.need.booking.unacceptableCropIds).not.toContain(bought.id);
        if (colour !== null) expect(gap.need.colours).toContain(colour);
        expect(gap.need.colours.length === 0).toBe(colour === null);
        expect(gap.need.booking.unacceptableColours).not.toContain(colour);
      }
    }),
    anySeed,
  );
});
