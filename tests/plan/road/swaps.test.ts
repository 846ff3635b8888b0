import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nearColours } from "#lib/domain/near-colours";
import type { Crop } from "#lib/domain/records/crop";
import type { Colour } from "#lib/domain/words";
import type { Need } from "#lib/plan/road/needs";
import { swapsFor } from "#lib/plan/road/swaps";
import { swapInWords } from "#lib/plan/words/today-words";
import { bed, booking, crop, curve, day, focal, planting, snapshot, variety } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { lastCutBySpec } from "./event-days-by-spec";
import { keptDays } from "./kept-days";
import { on } from "./lived-season";

const garden = (given: Parameters<typeof snapshot>[0] = {}) =>
  snapshot({
    crops: [crop({ id: 1, name: "Dahlia" }), crop({ id: 2, name: "Rose", shape: "form" })],
    varieties: [
      variety({ id: 1, name: "Plum one", colour: "plum" }),
      variety({ id: 2, name: "Peach one", colour: "peach" }),
      variety({ id: 3, name: "Green rose", colour: "green", cropId: 2 }),
    ],
    curves: [curve(), curve({ id: 2, cropId: 2 })],
    beds: [bed({ id: 1 }), bed({ id: 2 }), bed({ id: 3 })],
    plantings: [1, 2, 3].map((id) => planting({ id, bedId: id, varietyId: id, plantCount: 70 })),
    bookings: [booking({ id: 1, stemLines: focal(20, { colours: ["blush"] }) })],
    ...given,
  });
/** Large blush dahlias, large green roses and small peach ones. */
const HEADS = {
  crops: [
    crop({ id: 1, name: "Dahlia", headSize: "large" }),
    crop({ id: 2, name: "Rose", headSize: "large" }),
    crop({ id: 3, name: "Spray rose", headSize: "small" }),
  ],
  varieties: [
    variety({ id: 1, name: "Blush one", colour: "blush" }),
    variety({ id: 2, name: "Green rose", colour: "green", cropId: 2 }),
    variety({ id: 3, name: "Peach spray", colour: "peach", cropId: 3 }),
  ],
  curves: [curve(), curve({ id: 2, cropId: 2 }), curve({ id: 3, cropId: 3 })],
};
const firstSwaps = (snap: ReturnType<typeof garden>, today = "2027-06-08") => {
  const plan = on(snap, today);
  return swapsFor(plan, plan.work.gaps[0]);
};

/** Whether a crop is told to lack what is asked of a stem, ask by ask. */
function lacks({ asks }: Pick<Need, "asks">, { headSize, stemLength, outOfWater }: Crop): boolean {
  const heads = asks.filter((ask) => ask.endsWith(" head"));
  const isOtherHead = headSize !== null && heads.length > 0 && !heads.some((ask) => ask.startsWith(headSize));
  const isShort = stemLength === "short" && asks.some((ask) => ask === "long stem");
  const wilts = outOfWater === "wilts" && asks.some((ask) => ask === "out of water");
  return isOtherHead || isShort || wilts;
}

describe("what falls short", () => {
  test("[T9] of plum, peach and green for 20 blush, peach is near and goes first; all are cut on the Wednesday and Thursday before", () => {
    const swaps = firstSwaps(garden());
    expect(swaps.map(({ variety: { name }, otherColour }) => [name, otherColour])).toEqual([
      ["Peach one", "near"],
      ["Plum one", "another"],
      ["Green rose", "another"],
    ]);
    expect(swapInWords(swaps[0])).toMatch(/^\d+ Dahlia Peach one, peach \(a near colour\): B2, cut 9 Jun to 10 Jun$/);
  });

  test("[T9] a colour that the client named goes before a near one, what she refuses is not offered, and a sprayed bed gives none before its day", () => {
    const named = booking({ id: 1, alternativeColours: ["green"], stemLines: focal(20, { colours: ["blush"] }) });
    expect(firstSwaps(garden({ bookings: [named] }))[0]).toMatchObject({ otherColour: "named by the client" });
    const refused = { ...named, unacceptableColours: ["peach"] as Colour[], unacceptableCropIds: [2] };
    expect(firstSwaps(garden({ bookings: [refused] })).map(({ variety: { name } }) => name)).toEqual(["Plum one"]);
    const sprayed = bed({ id: 2, noEntryFrom: day("2027-06-07"), noEntryUntil: day("2027-06-12") });
    const beds = [bed({ id: 1 }), sprayed, bed({ id: 3 })];
    expect(firstSwaps(garden({ beds })).map(({ variety: { name } }) => name)).toEqual(["Plum one", "Green rose"]);
  });

  test("[T9] where only dahlias will do, a rose is offered as another crop, and a dahlia of another colour before it", () => {
    const only = booking({ id: 1, stemLines: focal(20, { cropId: 1, cropOnly: true, asks: [], colours: ["blush"] }) });
    const swaps = firstSwaps(garden({ bookings: [only] }));
    expect(swaps.map(({ crop: { name }, isOtherCrop }) => [name, isOtherCrop])).toEqual([
      ["Dahlia", false],
      ["Dahlia", false],
      ["Rose", true],
    ]);
  });

  test("[T9] beside dahlias of large heads a large rose goes before a small one, whatever its colour", () => {
    const bookings = [booking({ id: 1, stemLines: focal(90, { colours: ["blush"] }) })];
    const swaps = firstSwaps(garden({ ...HEADS, bookings }));
    expect(swaps.map(({ variety: { name } }) => name)).toEqual(["Green rose", "Peach spray"]);
    expect(swapInWords(swaps[0])).toContain("green (another colour), large head");
  });

  test("[T9] [N5] an enquiry beside it changes nothing of which crop its swaps should be like", () => {
    // The enquiry is the earlier event: its need stands before the wedding's, and is of small spray roses.
    const small = focal(5, { cropId: 3, cropOnly: true, colours: ["peach"] });
    const bookings = [
      booking({ id: 1, status: "enquiry", eventOn: day("2027-06-11"), stemLines: small }),
      booking({ id: 2, stemLines: focal(90, { colours: ["blush"] }) }),
    ];
    const swaps = firstSwaps(garden({ ...HEADS, bookings }));
    expect(swaps.map(({ variety: { name } }) => name)).toEqual(["Green rose", "Peach spray"]);
  });

  test("[T9] on any farm swaps are the stems over that could take the gap's place, sorted stem by stem by a second reading of the rule", () => {
    let offered = 0;
    fc.assert(
      fc.property(anyFarm, fc.integer({ min: 5, max: 25 }), (snap, date) => {
        const plan = on(snap, `2027-06-${String(date).padStart(2, "0")}`);
        for (const gap of plan.work.gaps) {
          const { need } = gap;
          const free = new Map<number, number>();
          for (const row of plan.work.over) {
            const age = need.eventDay - row.cutDay;
            const { colour } = row.variety;
            const isRefused =
              need.booking.unacceptableColours.includes(colour) ||
              need.booking.unacceptableCropIds.includes(row.crop.id);
            const isFit =
              (need.colours.length === 0 || need.colours.includes(colour)) &&
              (!need.cropOnly || need.cropId === row.crop.id);
            const isInWindow =
              age >= lastCutBySpec(snap.farm, need.booking, need.asks) &&
              age <= Math.floor(keptDays(row.crop, snap)[1]);
            if (!row.crop.roles.includes(need.role) || lacks(need, row.crop) || isRefused || isFit || !isInWindow)
              continue;
            free.set(row.variety.id, (free.get(row.variety.id) ?? 0) + row.stems);
          }
          const swaps = swapsFor(plan, gap);
          expect(new Map(swaps.map(({ variety: { id }, stems }) => [id, stems]))).toEqual(free);
          for (const { places } of swaps) expect(places.length).toBeGreaterThan(0);
          const near = nearColours(need.colours);
          const given = new Map<Crop, number>();
          for (const { needIndex, supplyIndex, stems } of plan.work.match.servings) {
            const of = plan.work.match.supplies[supplyIndex].crop;
            if (needIndex === gap.needIndex) given.set(of, (given.get(of) ?? 0) + stems);
          }
          const [most] = [...given].sort((x, y) => y[1] - x[1]);
          const isTied = [...given.values()].filter((stems) => stems === most?.[1]).length > 1;
          const shape = (snap.crops.find(({ id }) => id === need.cropId) ?? most?.[0])?.shape;
          const keys = swaps.map(({ crop: { usualRole, shape: own }, variety: { colour }, stems }) => {
            const isAsked = need.colours.length === 0 || need.colours.includes(colour);
            const isNamed = need.booking.alternativeColours.includes(colour);
            const rank = isAsked ? 0 : isNamed ? 1 : near.includes(colour) ? 2 : 3;
            const nearness = near.includes(colour) ? near.indexOf(colour) : 99;
            const [role, other] = [usualRole === need.role ? 0 : 1, shape === undefined || shape === own ? 0 : 1];
            return [role, other, rank, nearness, 1e6 - stems].map((one) => String(one).padStart(8, "0")).join();
          });
          // Of two crops that give as many either may be the model.
          if (need.cropId !== null || !isTied) expect([...keys].sort()).toEqual(keys);
          offered += swaps.length;
        }
      }),
      anySeed,
    );
    expect(offered).toBeGreaterThan(20);
  });
});
