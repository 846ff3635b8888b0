import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allAs, cropAs } from "#lib/domain/crop-of-variety";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, focal, planting, snapshot, variety } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { asVariety } from "./as-variety";

/** A crop whose days stand without their source: those of a variety are its own. */
const inDays = ({ holdDays, stretchDays, ...of }: Crop) => ({ ...of, days: [holdDays.count, stretchDays.count] });

const coveredWith = (own: Partial<Variety>, stemCount = 10): number => {
  const farm = snapshot({
    crops: [crop({ id: 1, name: "Lisianthus", roles: ["secondary"], usualRole: "secondary" })],
    varieties: [variety({ id: 1, ...own }), variety({ id: 2 })],
    plantings: [planting({ id: 1, varietyId: 1 })],
    bookings: [booking({ id: 1, stemLines: focal(stemCount) })],
  });
  const { match } = provenPlan(farm, 2027);
  return match.needs[0].stems - match.shortStems[0];
};

describe("what a variety says of itself", () => {
  test("[M11] a double lisianthus is focal where its crop is not, and single ones stay secondary", () => {
    expect(coveredWith({})).toBe(0);
    expect(coveredWith({ roles: ["focal", "secondary"] })).toBe(10);
  });

  test("[M11] its usual role is the crop’s if it has that one, else the first of its own", () => {
    const secondary = crop({ id: 1, roles: ["secondary"], usualRole: "secondary" });
    expect(cropAs(variety({ id: 1, roles: ["focal", "secondary"] }), secondary).usualRole).toBe("secondary");
    expect(cropAs(variety({ id: 1, roles: ["accent", "focal"] }), secondary).usualRole).toBe("focal");
  });

  test("[M11] the largest dahlias keep two days where dahlias keep three, so that what is cut three days before serves nobody", () => {
    const served = (own: Partial<Variety>): number => {
      const farm = snapshot({
        crops: [crop({ id: 1, name: "Dahlia", holdDays: { count: 3, mark: "common practice", source: null } })],
        varieties: [variety({ id: 1, ...own })],
        plantings: [],
        coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-09"), stemCount: 10 }],
        bookings: [booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(10) })],
      });
      return provenPlan(farm, 2027).match.servings.reduce((sum, { stems }) => sum + stems, 0);
    };
    expect([served({}), served({ holdDays: 2 }), served({ holdDays: 2, stretchDays: 3 })]).toEqual([10, 0, 10]);
  });

  test("a variety that says nothing has its crop itself, and one that does has the same object each time", () => {
    const dahlia = crop({ id: 1 });
    const plain = variety({ id: 1 });
    const large = variety({ id: 2, holdDays: 2 });
    expect(cropAs(plain, dahlia)).toBe(dahlia);
    expect(cropAs(large, dahlia)).toBe(cropAs(large, dahlia));
    expect(allAs([dahlia], [plain, large])).toEqual([dahlia, cropAs(large, dahlia)]);
  });

  test("[M11] on any farm every variety is what the rule says, field by field", () => {
    fc.assert(
      fc.property(anyFarm, ({ crops, varieties }) => {
        for (const one of varieties)
          for (const of of crops.filter(({ id }) => id === one.cropId))
            expect(inDays(cropAs(one, of))).toEqual(inDays(asVariety(one, of)));
      }),
      anySeed,
    );
  });
});
