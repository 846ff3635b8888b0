import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { addBooking, removeBooking } from "#db/write/bookings";
import {
  changePurchase,
  type PurchaseOrder,
  placePurchases,
  recordArrivals,
  removePurchase,
  takeBackArrival,
} from "#db/write/purchases";
import { booking, day } from "../small-farm";
import { done, kept, refused, withFarm } from "./kept-farm";

const order = (given: Partial<PurchaseOrder> = {}): PurchaseOrder => ({
  ...{ supplier: "Marl Street", orderedOn: day("2027-05-22"), arrivesOn: day("2027-06-10"), flower: 1 },
  ...{ bunchCount: 3, bunchStems: 10, bunchCents: null, daysToOpen: 0, bookingId: null, stemsForBooking: 0 },
  ...{ arrivedOn: null, arrivedStems: null },
  ...given,
});

test("a slip is ordered as one change; a flower that the farm has no variety of is made once, and undo takes all of it back", () => {
  withFarm((database) => {
    const before = kept(database);
    const flower = { cropId: 1, name: "bought white", colour: "white" as const };
    const placed = done(placePurchases(database, [order({ flower }), order({ flower, bunchCount: 2 })]));
    expect(placed.title).toBe("ordered 5 bunches from Marl Street, to arrive on Thursday 10 June 2027");
    const { purchases, varieties } = kept(database);
    expect(new Set(purchases.map(({ varietyId }) => varietyId)).size).toBe(1);
    expect(varieties.length).toBe(before.varieties.length + 1);
    expect(undoChange(database, placed.changeId ?? 0).ok).toBe(true);
    expect(kept(database)).toEqual(before);
  });
});

test("what came is written down, fewer than ordered too, and taken back; a changed or cancelled order keeps to the records", () => {
  withFarm((database) => {
    const [id, other] = done(placePurchases(database, [order(), order()])).result;
    const arrivals = [
      { id, arrivedStems: 30 },
      { id: other, arrivedStems: 12 },
    ];
    expect(done(recordArrivals(database, { arrivedOn: day("2027-06-10"), arrivals })).title).toBe(
      "recorded 42 stems arrived: 2 flowers",
    );
    expect(kept(database).purchases.map(({ arrivedStems }) => arrivedStems)).toEqual([30, 12]);
    expect(done(takeBackArrival(database, other)).title).toBe("took back the arrival of Variety 1 from Marl Street");
    const [first, second] = kept(database).purchases;
    expect([first.arrivedStems, second.arrivedStems]).toEqual([30, null]);
    done(changePurchase(database, { ...second, bunchCount: 4 }));
    expect(done(removePurchase(database, id)).title).toBe("took back the order of Variety 1 from Marl Street");
    expect(kept(database).purchases.map(({ bunchCount }) => bunchCount)).toEqual([4]);
  });
});

test("an order keeps its booking on the farm, and what is not on the farm is refused with its place", () => {
  withFarm((database) => {
    const { id: _, ...draft } = booking({ id: 0, client: "Ash" });
    const { result: bookingId } = done(addBooking(database, draft));
    done(placePurchases(database, [order({ bookingId, stemsForBooking: 24 })]));
    expect(refused(removeBooking(database, bookingId))[0]).toContain("1 purchase");
    expect(refused(placePurchases(database, [order({ flower: 99 }), order({ bookingId: 99 })]))).toEqual([
      "lines[0].flower: this variety is not on the farm",
      "lines[1].bookingId: this booking is not on the farm",
    ]);
    expect(
      refused(recordArrivals(database, { arrivedOn: day("2027-06-10"), arrivals: [{ id: 99, arrivedStems: 1 }] })),
    ).toEqual(["arrivals[0].id: this purchase is not on the farm"]);
    expect(kept(database).purchases.length).toBe(1);
  });
});
