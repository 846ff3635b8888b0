import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { Booking, BookingDraft } from "#lib/domain/records/booking";
import { OWN } from "#lib/domain/sourced";
import { asMetBy, matchedWith } from "#lib/plan/road/draft";
import { losers } from "#lib/plan/road/losers";
import { promiseState } from "#lib/plan/road/promise-state";
import { promisedDraft, withOwnPromises } from "#lib/plan/road/promised-draft";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, farm, focal, snapshot } from "../../small-farm";

const draftOf = ({ id: _, ...draft }: Booking): BookingDraft => draft;

/** Thirty cream stems cut on 9 June 2027, of a crop that keeps 40 days, and these bookings. */
const farmOf = (bookings: readonly Booking[], promiseLossCents: number | null = null) =>
  snapshot({
    farm: farm({ promiseLossCents }),
    crops: [crop({ id: 1, holdDays: { count: 40, ...OWN } })],
    coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-09"), stemCount: 30 }],
    plantings: [],
    bookings,
  });

const losersBy = (bookings: readonly Booking[], draft: BookingDraft, promiseLossCents: number | null = null) => {
  const plan = provenPlan(farmOf(bookings, promiseLossCents), 2027);
  const stands = asMetBy(plan, draft, null);
  return losers(stands.match, matchedWith(stands, draft, null).match).map(({ booking, stems, losses }) => [
    booking.client,
    stems,
    losses.map(({ need, stems, promisedStems }) => [need.role, stems, promisedStems]),
  ]);
};

describe("who would lose stems", () => {
  const earlier = draftOf(booking({ id: 9, client: "Later caller", eventOn: day("2027-06-12"), stemLines: focal(20) }));
  const held = booking({ id: 1, client: "Held", status: "held", eventOn: day("2027-06-13"), stemLines: focal(30) });

  test("a held booking of 30 stems loses 20 of them to a confirmed one of 20, and a promised one none", () => {
    expect(losersBy([held], earlier)).toEqual([["Held", 20, [["focal", 20, 0]]]]);
    const signed = { ...held, status: "confirmed" as const, promises: focal(30) };
    expect(losersBy([signed], earlier)).toEqual([]);
  });

  test("a farm that would lose nothing by it breaks 20 promises for the earlier event, and each is told", () => {
    const signed = { ...held, status: "confirmed" as const, promises: focal(25) };
    expect(losersBy([signed], earlier, 0)).toEqual([["Held", 20, [["focal", 20, 15]]]]);
  });

  test("on 40 seeded farms what each loses is what it is short of more, need by need, counted anew from both matches", () => {
    let lostCount = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const given = seededFarm(seed, { bedCount: 12, bookingCount: 24 });
      const others = given.bookings.slice(1).map((row) => ({ ...row, status: "held" as const }));
      const plan = provenPlan({ ...given, bookings: others }, 2027);
      const draft = { ...draftOf(given.bookings[0]), status: "confirmed" as const, eventOn: others[0].eventOn };
      const stands = asMetBy(plan, draft, null);
      const after = matchedWith(stands, draft, null).match;
      const shortIn = ({ needs, shortStems }: typeof after, bookingId: number) =>
        new Map(
          needs.flatMap((need, index) => (need.booking.id === bookingId ? [[need.kind, shortStems[index]]] : [])),
        );
      const expected = plan.snapshot.bookings.flatMap(({ id }) => {
        const was = shortIn(stands.match, id);
        const more = [...shortIn(after, id)].map(([kind, short]) => Math.max(0, short - (was.get(kind) ?? 0)));
        const stems = more.reduce((sum, count) => sum + count, 0);
        return stems > 0 ? [[id, stems] as const] : [];
      });
      const found = losers(stands.match, after).map(({ booking, stems }) => [booking.id, stems] as const);
      expect(new Map(found), `seed ${seed}`).toEqual(new Map(expected));
      lostCount += expected.length;
    }
    expect(lostCount).toBeGreaterThan(10);
  });
});

describe("a booking as it is saved", () => {
  const signed = booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(40), promises: focal(36) });
  const savedAs = (draft: BookingDraft, id: number | null = 1) =>
    promisedDraft(provenPlan(farmOf([signed]), 2027), draft, id);

  test("[M9] one that is confirmed is promised what the plan covers, and one that is not is promised nothing", () => {
    expect(savedAs({ ...draftOf(signed), client: "New" }, null).promises).toEqual([]);
    const empty = provenPlan(farmOf([]), 2027);
    expect(promisedDraft(empty, draftOf(signed), null).promises).toEqual(focal(30));
    expect(promisedDraft(empty, { ...draftOf(signed), status: "held" }, null).promises).toEqual([]);
  });

  test("[M9] a promise that the plan cannot keep stands until it is lowered, unless the day moves or less is asked", () => {
    const draft = { ...draftOf(signed), promises: [] };
    expect(savedAs(draft).promises).toEqual(focal(36));
    expect(savedAs({ ...draft, stemLines: focal(33) }).promises).toEqual(focal(33));
    expect(savedAs({ ...draft, eventOn: day("2027-06-13") }).promises).toEqual(focal(30));
    expect(savedAs({ ...draft, status: "enquiry" }).promises).toEqual([]);
  });

  test("what a draft is promised is what its booking was, if that was confirmed for the same day", () => {
    const draft = { ...draftOf(signed), promises: [] };
    const own = (bookings: Booking[], given: Partial<BookingDraft> = {}, id: number | null = 1) =>
      withOwnPromises({ bookings }, { ...draft, ...given }, id).promises;
    expect(own([signed])).toEqual(focal(36));
    expect(own([signed], { eventOn: day("2027-06-13") })).toEqual([]);
    expect(own([{ ...signed, status: "held" }])).toEqual([]);
    expect(own([signed], {}, null)).toEqual([]);
  });

  test("how a promise stands: of 40 stems 36 are promised and 30 covered, so 6 are broken; with 20 promised, 10 more are covered", () => {
    const state = (promises: Booking["promises"]) =>
      promiseState(provenPlan(farmOf([{ ...signed, promises }]), 2027).match, 1);
    expect(state(focal(36))).toMatchObject({
      ...{ needStems: 40, promisedStems: 36, coveredStems: 30, brokenStems: 6, moreStems: 0 },
    });
    expect(state(focal(20))).toMatchObject({ promisedStems: 20, brokenStems: 0, moreStems: 10 });
  });
});
