import { describe, expect, test } from "vitest";
import type { Crop } from "#lib/domain/crop";
import { OWN } from "#lib/domain/sourced";
import { type BuyInPrices, buyInFinder } from "#lib/plan/road/buy-in";
import { crop } from "../../small-farm";

const ANYTHING = { unacceptableCropIds: [] };

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
    expect(idFor({ role: "focal", cropId: 1, booking: ANYTHING })).toBe(1);
  });

  test("else the middle price of those whose usual role it is: of 100, 200, 300, 500 the lower middle, 200", () => {
    expect(idFor({ role: "focal", cropId: null, booking: ANYTHING })).toBe(4);
  });

  test("else the middle price of those able: only one can be an accent", () => {
    expect(idFor({ role: "accent", cropId: null, booking: ANYTHING })).toBe(6);
  });

  test("nothing, where no crop can take the role", () => {
    expect(idFor({ role: "line", cropId: null, booking: ANYTHING })).toBe(null);
  });

  test("a crop the booking will not have is never bought in for it: the middle of the others is", () => {
    const crops = [100, 300, 900].map((cents, index) => crop({ id: index + 1, buyInCents: { count: cents, ...OWN } }));
    const find = buyInFinder(crops).cropOf;
    const asked = (refused: number[]) => ({
      role: "focal" as const,
      cropId: null,
      booking: { unacceptableCropIds: refused },
    });
    expect([[], [2], [1, 2], [1, 2, 3]].map((refused) => find(asked(refused))?.id ?? null)).toEqual([2, 1, 3, null]);
  });
});
