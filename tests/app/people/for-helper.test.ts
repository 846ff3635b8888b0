import { expect, test } from "vitest";
import { seededFarm, TYPICAL } from "#demo/seeded-farm";
import type { Purchase } from "#lib/domain/records/purchase";
import { forHelper } from "../../../app/people/for-helper";
import { provenPlan } from "../../proven-plan";
import { day } from "../../small-farm";

const farm = seededFarm(3, TYPICAL);

const PURCHASE: Purchase = {
  id: 1,
  varietyId: farm.varieties[0].id,
  supplier: "Invented Wholesale",
  orderedOn: day("2027-06-01"),
  arrivesOn: day("2027-06-08"),
  bunchCount: 3,
  bunchStems: 10,
  bunchCents: 765_431,
  daysToOpen: 0,
  bookingId: null,
  stemsForBooking: 0,
  arrivedOn: null,
  arrivedStems: null,
};

test("nothing that a helper's plan is made of has a client's name, note or price, or what a purchase costs, at any depth", () => {
  const hidden = { note: "Hidden note", priceCents: 1_234_567 };
  const named = {
    ...farm,
    bookings: farm.bookings.map((row) => ({ ...row, client: `Secret Client${row.id}`, ...hidden })),
    purchases: [PURCHASE],
  };
  const said = JSON.stringify(forHelper(named));
  expect(JSON.stringify(named)).toMatch(/Client\d.*Hidden note.*1234567.*765431/);
  expect(said).not.toMatch(/Client\d|Hidden note|1234567|765431/);
  expect(said).toContain("Secret");
  expect(said).toContain("Invented Wholesale");
});

test("a helper's plan cuts the same stems in the same beds as the owner's, for bookings told apart", () => {
  const [own, short] = [provenPlan(farm, 2027), provenPlan(forHelper(farm), 2027)];
  expect(short.match.servings.length).toBeGreaterThan(100);
  const cuts = ({ match }: typeof own) =>
    match.servings.map(({ needIndex, supplyIndex, cutDay, stems }) => [needIndex, supplyIndex, cutDay, stems]);
  expect(cuts(short)).toEqual(cuts(own));
  const names = new Set(forHelper(farm).bookings.map(({ client }) => client));
  expect(names.size).toBe(farm.bookings.length);
});

test("what has not changed stays the same object, so that a plan is made anew only where the farm has", () => {
  const before = forHelper(farm);
  expect(forHelper(farm)).toBe(before);
  const [first, ...others] = farm.bookings;
  const after = forHelper({ ...farm, bookings: [{ ...first, spareShare: 0.2 }, ...others] });
  expect(after.bookings.map((row, index) => row === before.bookings[index])).toEqual([
    false,
    ...others.map(() => true),
  ]);
  expect(after.standingOrders).toBe(before.standingOrders);
  expect(after.purchases).toBe(before.purchases);
});
