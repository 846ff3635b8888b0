import { expect, test } from "vitest";
import { changeSchema } from "#lib/domain/what-if";

test("a supposed booking that was kept before prices, promises, lapsing, event days and what is asked of a stem is read, and says nothing of them", () => {
  const booking = {
    ...{ client: "Ash", eventOn: "2027-06-12", status: "held", palette: ["blush"], spareShare: 0.1, note: "" },
    ...{ unacceptableCropIds: [2], pieces: [{ recipeId: 1, pieceCount: 6, colours: [] }] },
    stemLines: [{ role: "focal", cropId: null, cropOnly: false, colours: [], stemCount: 40 }],
  };
  const read = changeSchema.parse({ kind: "booking-added", booking });
  expect(read).toEqual({
    kind: "booking-added",
    booking: {
      ...booking,
      stemLines: [{ ...booking.stemLines[0], asks: [] }],
      ...{ promises: [], alternativeColours: [], unacceptableColours: [] },
      ...{ lapsesAfter: null, takenOn: null, priceCents: null },
      ...{ finalDueOn: null, finalOn: null, finalPieces: [], finalStems: null, askedBefore: [] },
      ...{ leadDays: null, designDays: null, deliverDays: null },
    },
  });
});

test("a supposed planting that was kept before ages, sowing and words of one season is read as one of plants of which nothing is said", () => {
  const planting = {
    ...{ bedId: 1, varietyId: 2, seasonYear: 2027, treatment: "field", plantedOn: "2027-05-20", plantCount: 70 },
    ...{ aliveShare: 0.9, gradeOutShare: 0.1, winterSurvivalShare: null, flags: [] },
  };
  expect(changeSchema.parse({ kind: "planting-added", planting })).toEqual({
    kind: "planting-added",
    planting: { ...planting, ageSeasons: null, sown: false, daysLate: null, yieldFactor: null },
  });
});

test("what a supposed booking must have said at all times is still asked for", () => {
  const { error } = changeSchema.safeParse({
    kind: "booking-added",
    booking: {
      ...{ client: "Ash", spareShare: 0.1, unacceptableCropIds: [], pieces: [] },
      stemLines: [{ role: "focal", cropId: null, cropOnly: true, stemCount: 40 }],
    },
  });
  expect(error?.issues.map(({ path }) => path.join("."))).toEqual(["booking.eventOn", "booking.stemLines.0.cropId"]);
});
