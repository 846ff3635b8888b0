import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { removeBooking } from "#db/write/bookings";
import { recordReviews, removeReviews } from "#db/write/reviews";
import type { ReviewDraft } from "#lib/domain/records/review";
import { done, kept, refused, withFarm } from "./kept-farm";

const review = (given: Partial<ReviewDraft> = {}): ReviewDraft => ({
  bookingId: 1,
  role: "focal",
  plannedStems: 44,
  cutStems: 40,
  boughtStems: 4,
  thrownAwayStems: 0,
  ...given,
});

test("a review is kept once for each booking and role: recorded again, it takes the place of the first", () => {
  withFarm((database) => {
    const { client } = kept(database).bookings[0];
    expect(done(recordReviews(database, [review(), review({ role: "filler" })])).title).toBe(
      `reviewed ${client}: all stems used`,
    );
    expect(done(recordReviews(database, [review({ thrownAwayStems: 7 })])).title).toBe(
      `reviewed ${client}: 7 stems thrown away`,
    );
    expect(kept(database).reviews.map(({ id, role, thrownAwayStems }) => [id, role, thrownAwayStems])).toEqual([
      [1, "focal", 7],
      [2, "filler", 0],
    ]);
  });
});

test("reviews go with their booking, or when they are taken back, and undo brings all back", () => {
  withFarm((database) => {
    done(recordReviews(database, [review(), review({ role: "filler" })]));
    const before = kept(database);
    for (const remove of [() => removeReviews(database, 1), () => removeBooking(database, 1)]) {
      const removed = done<unknown>(remove());
      expect(kept(database).reviews).toEqual([]);
      expect(undoChange(database, removed.changeId ?? 0).ok).toBe(true);
      expect(kept(database)).toEqual(before);
    }
  });
});

test("a review of a booking that is not on the farm is refused, and nothing is written", () => {
  withFarm((database) => {
    expect(refused(recordReviews(database, [review(), review({ bookingId: 99 })]))).toEqual([
      "reviews[1].bookingId: this booking is not on the farm",
    ]);
    expect(kept(database).reviews).toEqual([]);
  });
});
