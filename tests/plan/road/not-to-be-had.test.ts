import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { COLOURS } from "#lib/domain/words";
import { buyInFinder } from "#lib/plan/road/buy-in";
import { notToBeHad } from "#lib/plan/road/not-to-be-had";
import { insteadInWords, lackInWords } from "#lib/plan/words/not-to-be-had-words";
import { monthsInWords } from "#lib/plan/words/trade-words";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, focal, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";

const farmOf = (...bookings: Parameters<typeof booking>[0][]) =>
  snapshot({
    plantings: [],
    crops: [
      crop({ id: 1, name: "Anemone", buyInMonths: [10, 11, 12, 1, 2, 3, 4, 5], buyInColours: ["white", "blue"] }),
      crop({ id: 2, name: "Garden rose", buyInColours: ["white", "lavender", "coral"] }),
    ],
    bookings: bookings.map(booking),
  });
const lacking = (...bookings: Parameters<typeof booking>[0][]) => {
  const given = farmOf(...bookings);
  return notToBeHad(given, provenPlan(given, 2027).gaps);
};

describe("what cannot be bought in", () => {
  test("[B2] 24 blue focals for 17 July: lavender garden roses are to be had, or blue anemones in May, which is nearer than October", () => {
    const [one, ...others] = lacking({
      id: 1,
      client: "The Ashgrove wedding",
      eventOn: day("2027-07-17"),
      stemLines: focal(24, { colours: ["blue"] }),
    });
    expect(others).toEqual([]);
    expect(lackInWords(one)).toBe("24 focal stems in blue for The Ashgrove wedding, 17 Jul");
    expect(one.otherMonth).toMatchObject({ month: 5, bought: { crop: { name: "Anemone" }, colour: "blue" } });
    expect(insteadInWords(one)).toBe(
      "Nothing of the kind is to be had in July: ask for lavender: garden rose is to be had; or another date: in May anemone is.",
    );
  });

  test("[B2] anemones and nothing else for 14 August: October is nearer than May, and another crop is named", () => {
    const [one] = lacking({
      id: 1,
      eventOn: day("2027-08-14"),
      stemLines: focal(5, { cropId: 1, cropOnly: true, asks: [], colours: ["white"] }),
    });
    expect(one.otherMonth?.month).toBe(10);
    expect(one.otherCrop?.crop.name).toBe("Garden rose");
    expect(insteadInWords(one)).toContain("or another crop: garden rose is.");
  });

  test("[B2] a role that no crop on the list can take is said to be so", () => {
    const [one] = lacking({ id: 1, stemLines: focal(3, { role: "line" }) });
    expect(insteadInWords(one)).toBe("No crop on the farm’s list could be bought for it.");
  });

  test("what is to be had is not named", () => {
    expect(lacking({ id: 1, stemLines: focal(3, { colours: ["blue", "white"] }) })).toEqual([]);
  });

  test("[B2] in 200 farms the gaps bought in and those not to be had are all the gaps, and each thing offered is to be had", () => {
    fc.assert(
      fc.property(anyFarm, (given) => {
        const { gaps, buying } = provenPlan(given, 2027);
        const { boughtAs } = buyInFinder(given);
        const lacks = notToBeHad(given, gaps);
        const indexes = [...buying, ...lacks].map(({ gap }) => gap.needIndex).sort((a, b) => a - b);
        expect(indexes).toEqual(gaps.map(({ needIndex }) => needIndex));
        for (const { gap, month, nearColour, otherMonth, otherCrop } of lacks) {
          expect(gap.need.colours).not.toContain(nearColour?.colour);
          if (nearColour) expect(COLOURS).toContain(nearColour.colour);
          if (nearColour) expect(boughtAs({ ...gap.need, colours: [nearColour.colour] })?.crop).toBe(nearColour.crop);
          expect(otherMonth?.month).not.toBe(month);
          if (otherMonth) expect(boughtAs(gap.need, otherMonth.month)).toEqual(otherMonth.bought);
          // By trying every month: none nearer has anything.
          const away = (other: number) => Math.min((other - month + 12) % 12, (month - other + 12) % 12);
          const had = Array.from({ length: 12 }, (_, index) => index + 1).filter((other) => boughtAs(gap.need, other));
          expect(otherMonth ? away(otherMonth.month) : null).toBe(had.length ? Math.min(...had.map(away)) : null);
          if (otherCrop) expect(gap.need.cropOnly && otherCrop.crop.id !== gap.need.cropId).toBe(true);
        }
      }),
      anySeed,
    );
  });
});

test("months are said as runs, over New Year too", () => {
  expect(monthsInWords([11, 12, 1, 2, 5])).toBe("May, and November to February");
  expect(monthsInWords([7, 8, 9, 10])).toBe("July to October");
  expect([monthsInWords([]), monthsInWords([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])]).toEqual(["all year", "all year"]);
  expect(monthsInWords([1, 12])).toBe("December to January");
});
