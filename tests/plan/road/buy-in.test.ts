import { describe, expect, test } from "vitest";
import type { Crop } from "#lib/domain/records/crop";
import { OWN } from "#lib/domain/sourced";
import { type BuyInPrices, buyInFinder } from "#lib/plan/road/buy-in";
import { provenPlan } from "../../proven-plan";
import { booking, crop, focal, snapshot } from "../../small-farm";

const ANYTHING = { unacceptableCropIds: [], unacceptableColours: [] };

describe("what a need is bought in as", () => {
  const priced = (id: number, cents: number, given: Partial<Crop> = {}) =>
    crop({ id, buyInCents: { count: cents, mark: "own", source: null }, ...given });
  const crops = [
    priced(1, 500),
    priced(2, 100),
    priced(3, 300),
    priced(4, 200),
    priced(5, 50, { roles: ["filler", "focal"], usualRole: "filler" }),
    priced(6, 80, { roles: ["filler", "accent"], usualRole: "filler" }),
  ];
  const idFor = (need: Parameters<BuyInPrices["cropOf"]>[0]) => buyInFinder(crops).cropOf(need)?.id ?? null;

  test("the named crop, whatever its price", () => {
    expect(idFor({ role: "focal", cropId: 1, cropOnly: false, booking: ANYTHING })).toBe(1);
  });

  test("else the middle price of those whose usual role it is: of 100, 200, 300, 500 the lower middle, 200", () => {
    expect(idFor({ role: "focal", cropId: null, cropOnly: false, booking: ANYTHING })).toBe(4);
  });

  test("else the middle price of those able: only one can be an accent", () => {
    expect(idFor({ role: "accent", cropId: null, cropOnly: false, booking: ANYTHING })).toBe(6);
  });

  test("nothing, where no crop can take the role", () => {
    expect(idFor({ role: "line", cropId: null, cropOnly: false, booking: ANYTHING })).toBe(null);
  });

  test("a crop the booking will not have is never bought in for it: the middle of the others is", () => {
    const crops = [100, 300, 900].map((cents, index) => crop({ id: index + 1, buyInCents: { count: cents, ...OWN } }));
    const { cropOf: find, centsOf } = buyInFinder(crops);
    const asked = (refused: number[]) => ({
      role: "focal" as const,
      cropId: null,
      cropOnly: false,
      booking: { ...ANYTHING, unacceptableCropIds: refused },
    });
    expect([[], [2], [1, 2], [1, 2, 3]].map((refused) => find(asked(refused))?.id ?? null)).toEqual([2, 1, 3, null]);
    expect([[], [2], [1, 2], [1, 2, 3]].map((refused) => centsOf(asked(refused)))).toEqual([300, 300, 300, 300]);
  });

  test("[M4] refusing a crop neither weakens nor strengthens a claim: of two alike bookings for 70 stems the first is served", () => {
    const crops = [100, 300, 900].map((cents, index) => crop({ id: index + 1, buyInCents: { count: cents, ...OWN } }));
    for (const refused of [[2], [3], [2, 3]]) {
      const bookings = [
        booking({ id: 1, unacceptableCropIds: refused, stemLines: focal(70) }),
        booking({ id: 2, stemLines: focal(70) }),
      ];
      const { match } = provenPlan(snapshot({ crops, bookings }), 2027);
      expect([0, 1].map((need) => match.network.flow.unmetCost[match.network.nodeOfNeed(need)])).toEqual([300, 300]);
    }
  });

  test("of crops at one price the smaller bunch is bought, then the first by name; the order they were written in does not matter", () => {
    const priced = (id: number, name: string, bunch: number) =>
      crop({ id, name, bunchStems: { count: bunch, ...OWN } });
    const asked = { role: "focal" as const, cropId: null, cropOnly: false, booking: ANYTHING };
    for (const [a, b, c] of [
      [1, 2, 3],
      [3, 2, 1],
      [2, 3, 1],
    ]) {
      const crops = [priced(a, "Rose", 10), priced(b, "Dahlia", 10), priced(c, "Aster", 5)].sort((x, y) => x.id - y.id);
      expect(buyInFinder(crops).cropOf(asked)?.name).toBe("Dahlia");
    }
  });

  test("a crop that a booking names and refuses is not bought: another is, or none where no other will do", () => {
    const crops = [crop({ id: 1 }), crop({ id: 2 })];
    const asked = { role: "focal" as const, cropId: 1, booking: { ...ANYTHING, unacceptableCropIds: [1] } };
    const { cropOf } = buyInFinder(crops);
    expect(cropOf({ ...asked, cropOnly: false })?.id).toBe(2);
    expect(cropOf({ ...asked, cropOnly: true })).toBe(null);
  });
});
