import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { ById, checkSnapshot } from "#lib/domain/snapshot";
import { bed, booking, crop, curve, day, focal, planting, snapshot, variety } from "../small-farm";

const placesIn = (given: Parameters<typeof snapshot>[0]) => {
  const checked = checkSnapshot(snapshot(given));
  return checked.ok ? [] : checked.problems.map(({ place }) => place);
};

test("a farm whose rows name only what it has passes unchanged", () => {
  const sound = snapshot({ bookings: [booking({ id: 1, stemLines: focal(3, { cropId: 1 }) })] });
  expect(checkSnapshot(sound)).toEqual({ ok: true, parsed: sound });
  const invented = seededFarm(1, { bedCount: 12, bookingCount: 10 });
  expect(checkSnapshot(invented).ok).toBe(true);
});

test("every row that names what the farm has not is told, all at once and each with its place", () => {
  expect(
    placesIn({
      varieties: [variety({ id: 1, cropId: 9 })],
      curves: [curve({ id: 2, cropId: 8, varietyId: 7 })],
      plantings: [planting({ id: 3, bedId: 6, varietyId: 5 })],
      coolerStock: [{ id: 4, varietyId: 4, cutOn: day("2027-06-07"), stemCount: 1 }],
      bookings: [
        booking({
          id: 5,
          unacceptableCropIds: [1, 3],
          pieces: [{ recipeId: 2, pieceCount: 1, colours: [] }],
          stemLines: [...focal(3), ...focal(3, { cropId: 44 })],
        }),
      ],
    }),
  ).toEqual([
    "varieties[1].cropId",
    "curves[2].cropId",
    "curves[2].varietyId",
    "plantings[3].bedId",
    "plantings[3].varietyId",
    "coolerStock[4].varietyId",
    "bookings[5].pieces[0].recipeId",
    "bookings[5].stemLines[1].cropId",
    "bookings[5].unacceptableCropIds[1]",
  ]);
});

test("the problem says which id is missing", () => {
  const checked = checkSnapshot(snapshot({ plantings: [planting({ id: 3, bedId: 6 })] }));
  expect(checked).toEqual({ ok: false, problems: [{ place: "plantings[3].bedId", message: "bed 6 does not exist" }] });
});

test("rows are found by id; an id that is not there is a mistake of the caller", () => {
  const beds = new ById("bed", [bed({ id: 2 }), bed({ id: 5 })]);
  expect(beds.get(5).name).toBe("B5");
  expect([beds.has(2), beds.has(3), beds.find(3)]).toEqual([true, false, undefined]);
  expect(() => beds.get(3)).toThrow(new RangeError("bed 3 is not on this farm"));
  expect(new ById("crop", [crop({ id: 1 })]).get(1).id).toBe(1);
});
