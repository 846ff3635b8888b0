import { describe, expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import { OWN } from "#lib/domain/sourced";
import type { Colour } from "#lib/domain/words";
import { buyInFinder } from "#lib/plan/road/buy-in";
import type { Need } from "#lib/plan/road/needs";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, focal, snapshot } from "../../small-farm";

const inJune = { eventDay: toDayNumber(day("2027-06-12")), leadDays: 2, colours: [] };
const finder = (crops: readonly Crop[]) => buyInFinder(snapshot({ crops }));
const ANYTHING: Pick<Booking, "unacceptableCropIds" | "unacceptableColours"> = {
  unacceptableCropIds: [],
  unacceptableColours: [],
};

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
  type Asked = Pick<Need, "role" | "cropId" | "cropOnly" | "asks"> & { readonly booking: typeof ANYTHING };
  const idFor = (asked: Asked) => finder(crops).boughtAs({ ...inJune, ...asked })?.crop.id ?? null;

  test("the named crop, whatever its price", () => {
    expect(idFor({ role: "focal", cropId: 1, cropOnly: false, asks: [], booking: ANYTHING })).toBe(1);
  });

  test("else the middle price of those whose usual role it is: of 100, 200, 300, 500 the lower middle, 200", () => {
    expect(idFor({ role: "focal", cropId: null, cropOnly: false, asks: [], booking: ANYTHING })).toBe(4);
  });

  test("else the middle price of those able: only one can be an accent", () => {
    expect(idFor({ role: "accent", cropId: null, cropOnly: false, asks: [], booking: ANYTHING })).toBe(6);
  });

  test("nothing, where no crop can take the role", () => {
    expect(idFor({ role: "line", cropId: null, cropOnly: false, asks: [], booking: ANYTHING })).toBe(null);
  });

  test("a crop the booking will not have is never bought in for it: the middle of the others is", () => {
    const crops = [100, 300, 900].map((cents, index) => crop({ id: index + 1, buyInCents: { count: cents, ...OWN } }));
    const { boughtAs, centsOf } = finder(crops);
    const asked = (refused: number[]) => ({
      ...inJune,
      role: "focal" as const,
      cropId: null,
      ...{ cropOnly: false, asks: [] },
      booking: { ...ANYTHING, unacceptableCropIds: refused },
    });
    expect([[], [2], [1, 2], [1, 2, 3]].map((refused) => boughtAs(asked(refused))?.crop.id ?? null)).toEqual([
      2,
      1,
      3,
      null,
    ]);
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
    const asked = { ...inJune, role: "focal" as const, cropId: null, cropOnly: false, asks: [], booking: ANYTHING };
    for (const [a, b, c] of [
      [1, 2, 3],
      [3, 2, 1],
      [2, 3, 1],
    ]) {
      const crops = [priced(a, "Rose", 10), priced(b, "Dahlia", 10), priced(c, "Aster", 5)].sort((x, y) => x.id - y.id);
      expect(finder(crops).boughtAs(asked)?.crop.name).toBe("Dahlia");
    }
  });

  test("a crop that a booking names and refuses is not bought: another is, or none where no other will do", () => {
    const crops = [crop({ id: 1 }), crop({ id: 2 })];
    const asked = { ...inJune, role: "focal" as const, cropId: 1, booking: { ...ANYTHING, unacceptableCropIds: [1] } };
    const { boughtAs } = finder(crops);
    expect(boughtAs({ ...asked, cropOnly: false, asks: [] })?.crop.id).toBe(2);
    expect(boughtAs({ ...asked, cropOnly: true, asks: [] })).toBe(null);
  });
});

describe("what is to be had", () => {
  const priced = (id: number, cents: number, given: Partial<Crop>) =>
    crop({ id, buyInCents: { count: cents, ...OWN }, ...given });
  const all = { buyInMonths: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] };
  const crops = [
    priced(1, 450, { name: "Garden rose", ...all, buyInColours: ["white", "blush", "coral"] }),
    priced(2, 600, { name: "Hydrangea", ...all, buyInColours: ["white", "blue"] }),
    priced(3, 250, { name: "Anemone", buyInMonths: [10, 11, 12, 1, 2, 3, 4, 5], buyInColours: ["white", "blue"] }),
    priced(4, 300, {
      name: "Ball dahlia",
      roles: ["focal", "secondary"],
      usualRole: "secondary",
      buyInMonths: [7, 8, 9, 10],
      buyInColours: ["plum"],
    }),
  ];
  const asked = (colours: readonly Colour[], on: string, booking = ANYTHING) => ({
    ...{ role: "focal" as const, cropId: null, cropOnly: false, asks: [], booking, colours },
    ...{ eventDay: toDayNumber(day(on)), leadDays: 2 },
  });
  const bought = (...of: Parameters<typeof asked>) => {
    const found = finder(crops).boughtAs(asked(...of));
    return found && `${found.colour ?? "any"} ${found.crop.name}`;
  };

  test("[B1] a blue focal in July is a hydrangea and no garden rose, in March the cheaper of two, an anemone", () => {
    expect(bought(["blue"], "2027-07-17")).toBe("blue Hydrangea");
    expect(bought(["blue"], "2027-03-13")).toBe("blue Anemone");
  });

  test("[B1] it is bought in the first of its colours that is to be had, and of the usual role before another", () => {
    expect(bought(["plum", "blush"], "2027-07-17")).toBe("blush Garden rose");
    expect(bought(["plum"], "2027-07-17")).toBe("plum Ball dahlia");
    expect(bought(["plum"], "2027-06-12")).toBe(null);
  });

  test("[B1] what counts is the month in which it arrives, two lead days before the event: plum for 2 July is not to be had, for 3 July it is", () => {
    expect(bought(["plum"], "2027-07-02")).toBe(null);
    expect(bought(["plum"], "2027-07-03")).toBe("plum Ball dahlia");
  });

  test("[B1] a colour that the booking refuses is never bought, though it stands among its colours", () => {
    expect(bought(["blue", "white"], "2027-07-17", { ...ANYTHING, unacceptableColours: ["blue"] })).toBe(
      "white Garden rose",
    );
    expect(bought(["blue"], "2027-07-17", { ...ANYTHING, unacceptableColours: ["blue"] })).toBe(null);
  });

  test("[M4] the price is that of what would be bought were nothing refused; where nothing is to be had, the dearest that could serve", () => {
    const cents = (...of: Parameters<typeof asked>) => finder(crops).centsOf(asked(...of));
    expect(cents(["blue"], "2027-07-17")).toBe(600);
    expect(cents(["blue"], "2027-07-17", { ...ANYTHING, unacceptableColours: ["blue"] })).toBe(600);
    expect(cents(["blue"], "2027-03-13")).toBe(250);
    expect(cents(["green"], "2027-07-17")).toBe(600);
  });
});
