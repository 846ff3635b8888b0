import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { OWN } from "#lib/domain/sourced";
import type { Change } from "#lib/domain/what-if";
import { promisedDraft } from "#lib/plan/road/promised-draft";
import { promisesMade } from "#lib/plan/road/promises-made";
import { adoption } from "#lib/plan/what-if/adoption";
import { applyChanges } from "#lib/plan/what-if/what-if";
import { adoptionInWords } from "#lib/plan/words/adoption-words";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { booking, crop, day, focal, snapshot } from "../../small-farm";
import { on } from "./lived-season";

const MARCH = day("2027-03-01");

/** Thirty cream stems cut on 9 June 2027, of a crop that keeps 40 days, and these bookings. */
const farmOf = (...bookings: readonly Booking[]): Snapshot =>
  snapshot({
    crops: [crop({ id: 1, holdDays: { count: 40, ...OWN } })],
    coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-09"), stemCount: 30 }],
    plantings: [],
    bookings,
  });

const signed = booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(40), promises: focal(25) });
const unsigned = { ...signed, promises: [] };
const made = (before: readonly Booking[], after: readonly Booking[]) =>
  promisesMade({ bookings: before }, farmOf(...after), MARCH).map(({ bookingId, promises }) => [bookingId, promises]);

describe("a change of the farm by a sheet or a what-if", () => {
  test("[M9] promises a new confirmed booking of 40 stems the 30 that there are, and an enquiry or an event that is over nothing", () => {
    expect(made([], [unsigned])).toEqual([[1, focal(30)]]);
    expect(made([], [{ ...unsigned, status: "enquiry" }])).toEqual([]);
    expect(made([], [{ ...unsigned, eventOn: day("2027-02-27") }])).toEqual([]);
  });

  test("[M9] promises what it confirms or moves, and leaves alone what stood so, and what brings a promise of its own", () => {
    expect(made([{ ...unsigned, status: "held" }], [unsigned])).toEqual([[1, focal(30)]]);
    expect(made([{ ...signed, eventOn: day("2027-06-13") }], [unsigned])).toEqual([[1, focal(30)]]);
    expect(made([unsigned], [unsigned])).toEqual([]);
    expect(made([], [signed])).toEqual([]);
  });

  test("[M9] on 10 seeded farms a booking so promised has what its form would have promised it", () => {
    let promisedCount = 0;
    for (let seed = 1; seed <= 10; seed++) {
      const after = seededFarm(seed, { bedCount: 12, bookingCount: 12 });
      const of = after.bookings.find(({ status, eventOn }) => status === "confirmed" && eventOn >= MARCH);
      if (!of) continue;
      const others = { ...after, bookings: after.bookings.filter(({ id }) => id !== of.id) };
      const [promise] = promisesMade(others, after, MARCH);
      const { id, ...draft } = of;
      const byForm = promisedDraft(on({ ...after, bookings: [...others.bookings] }, "2027-03-01"), draft, null);
      expect([promise?.bookingId ?? id, promise?.promises ?? []]).toEqual([id, byForm.promises]);
      promisedCount += byForm.promises.length;
    }
    expect(promisedCount).toBeGreaterThan(10);
  });
});

describe("a what-if that is adopted", () => {
  const adopted = (farm: Snapshot, ...changes: Change[]) => adoption(farm, 2027, changes, MARCH).bookings;
  const moved: Change = { kind: "booking-moved", bookingId: 1, eventOn: day("2027-06-19") };

  test("[M9] takes the promise of another day away as long as it is supposed, and makes it anew as it is adopted", () => {
    expect(applyChanges(farmOf(signed), 2027, [moved]).snapshot.bookings[0].promises).toEqual([]);
    expect(adopted(farmOf(signed), moved).changed[0].promises).toEqual(focal(30));
    const same: Change = { ...moved, eventOn: signed.eventOn };
    expect(applyChanges(farmOf(signed), 2027, [same]).snapshot.bookings[0].promises).toEqual(focal(25));
  });

  test("[M9] promises the bookings that it adds or confirms, and nothing to one that it takes back to a hold", () => {
    const { id: _, ...draft } = unsigned;
    expect(adopted(farmOf(), { kind: "booking-added", booking: draft }).added[0].promises).toEqual(focal(30));
    const held = farmOf({ ...unsigned, status: "held" });
    const set = (status: Booking["status"]): Change => ({ kind: "status-set", bookingId: 1, status });
    expect(adopted(held, set("confirmed")).changed[0].promises).toEqual(focal(30));
    expect(adopted(farmOf(signed), set("held")).changed[0].promises).toEqual([]);
  });

  test("says of a promise that it is made anew, or over", () => {
    const words = (change: Change) => adoptionInWords(adoption(farmOf(signed), 2027, [change]), farmOf(signed));
    expect(words(moved)[0]).toMatch(/; promised anew what the plan then covers$/);
    expect(words({ kind: "status-set", bookingId: 1, status: "held" })[0]).toMatch(/; its promise is over$/);
  });
});

describe("a sheet of bookings brought back", () => {
  const bookingsOf = (edit: (text: string) => string) => {
    const farm = farmOf(signed);
    const sheet = farmSheets(farm).find(({ name }) => name === "bookings.csv");
    const { records, problems } = readFarmSheets(
      [{ name: "bookings.csv", text: edit(sheet?.text ?? "") }],
      knownFarm(farm),
    );
    expect(problems).toEqual([]);
    return records.bookings?.map(({ eventOn, promises }) => [eventOn, promises.map(({ stemCount }) => stemCount)]);
  };

  test("[M9] with another day it is not held to the promise of the day before, with another note it is", () => {
    expect(bookingsOf((text) => text.replace("2027-06-12", "2027-06-19"))).toEqual([["2027-06-19", []]]);
    expect(bookingsOf((text) => text.replace("confirmed", "held"))).toEqual([["2027-06-12", []]]);
    expect(bookingsOf((text) => text.replace("Client 1", "Client One"))).toEqual([["2027-06-12", [25]]]);
  });
});
