import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { addDays, type Day, toDay, toDayNumber } from "#lib/domain/day";
import type { Enquiry } from "#lib/domain/records/enquiry";
import type { Snapshot } from "#lib/domain/snapshot";
import { COLOURS, ROLES } from "#lib/domain/words";
import { buyInFinder } from "#lib/plan/road/buy-in";
import { enquiryAnswer, heldBooking } from "#lib/plan/road/enquiry";
import { nearestThatHas, type OtherDay, onOtherDays, sameWeekdays } from "#lib/plan/road/enquiry-days";
import { colourOffers } from "#lib/plan/road/enquiry-offers";
import { checkMatch, type Match, match as matchOf } from "#lib/plan/road/match";
import { matchNetwork } from "#lib/plan/road/match-network";
import { stemsWithoutSpare } from "#lib/plan/road/needs";
import type { Plan } from "#lib/plan/road/plan";
import { poorMatches } from "#lib/plan/road/unusual-years";
import { provenPlan } from "../../proven-plan";
import { day } from "../../small-farm";
import { mostWithoutLoss } from "./most-without-loss";
import { aroundNewYear } from "./new-year-farm";

/** An enquiry of a seeded farm, different with each seed: now and then near another booking, in its colours. */
function seededEnquiry({ bookings }: Snapshot, seed: number): Enquiry {
  const near = bookings[(seed * 5) % bookings.length];
  const colours = seed % 3 === 0 ? near.palette : [COLOURS[(seed * 7) % COLOURS.length]];
  return {
    stemCount: 1 + ((seed * 37) % 160),
    colours: [...colours],
    role: seed % 4 === 0 ? ROLES[seed % ROLES.length] : "focal",
    eventOn: seed % 2 === 0 ? near.eventOn : addDays(near.eventOn, 7),
  };
}
const CUT_FOR_ANYBODY = { bookingId: null, stemsAsked: null, goodStems: null, restStands: false };
const seeds = (count: number) => Array.from({ length: count }, (_, index) => index + 1);
const smallFarm = (seed: number) => seededFarm(seed, { bedCount: 12, bookingCount: 14 });

describe("an enquiry over seeded farms", () => {
  test("[E1] [L2] an answer is what the booking gets once it is saved, less what others then lose", () => {
    for (const seed of seeds(60)) {
      const farm = smallFarm(seed);
      const enquiry = seededEnquiry(farm, seed);
      const before = provenPlan(farm, 2027);
      const { likelyNeedStems, draft, losers } = enquiryAnswer(before, [], enquiry);
      expect(checkMatch(draft.match)).toEqual([]);
      const saved = { ...heldBooking(enquiry, farm.farm), client: "The caller", id: 100_000 };
      const after = provenPlan({ ...farm, bookings: [...farm.bookings, saved] }, 2027);
      const lost = lostStems(before, after);
      expect(losers.reduce((sum, { stems }) => sum + stems, 0)).toBe(lost);
      expect(likelyNeedStems).toBe(Math.max(0, gotStems(after, saved.id) - lost));
    }
  });

  test("[E2] the promise is never more than is likely, nor more than any poor year leaves when it is saved there", () => {
    for (const seed of seeds(20)) {
      const farm = smallFarm(seed);
      const planned = provenPlan(farm, 2027);
      const poor = poorMatches(planned);
      const answer = enquiryAnswer(planned, poor, seededEnquiry(farm, seed));
      expect(answer.promisedStems).toBeLessThanOrEqual(answer.likelyStems);
      for (const year of poor) {
        const { needs } = answer.draft.match;
        const network = matchNetwork(farm.farm, year.supplies, needs, {
          centsOf: () => 100,
          middleCentsOf: () => 100,
          allCrops: [],
        });
        const most = mostWithoutLoss({ needs, network }, answer.needIndex, keptIn(year, answer.draft.match));
        expect(answer.promisedNeedStems).toBeLessThanOrEqual(most);
      }
    }
  });

  test("[E3] every other need can keep what it has while the enquiry is given what is likely", () => {
    let asMuchAsCanBe = 0;
    for (const seed of seeds(60)) {
      const farm = smallFarm(seed);
      const planned = provenPlan(farm, 2027);
      const { draft, needIndex, likelyNeedStems } = enquiryAnswer(planned, [], seededEnquiry(farm, seed));
      const most = mostWithoutLoss(draft.match, needIndex, keptIn(planned.match, draft.match));
      expect(likelyNeedStems).toBeLessThanOrEqual(most);
      if (likelyNeedStems === most) asMuchAsCanBe++;
    }
    // Costs may prefer a bought stem to a long chain of swaps; it is rare.
    expect(asMuchAsCanBe).toBeGreaterThanOrEqual(57);
  });

  test("[E4] only colours asked are counted, and each near colour offered is named and brings more", () => {
    let offered = 0;
    for (const seed of seeds(30)) {
      const farm = smallFarm(seed);
      const planned = provenPlan(farm, 2027);
      const poor = poorMatches(planned);
      const asked = enquiryAnswer(planned, poor, seededEnquiry(farm, seed));
      const answers = [asked, ...[...colourOffers(planned, poor, asked)].map(({ answer }) => answer)];
      answers.forEach(({ enquiry, draft, needIndex, likelyStems }, index) => {
        expect(enquiry.colours.slice(0, asked.enquiry.colours.length)).toEqual(asked.enquiry.colours);
        expect(enquiry.colours.length).toBe(asked.enquiry.colours.length + index);
        for (const { needIndex: served, supplyIndex } of draft.match.servings)
          if (served === needIndex && enquiry.colours.length > 0)
            expect(enquiry.colours).toContain(draft.match.supplies[supplyIndex].variety.colour);
        if (index > 0) expect(likelyStems).toBeGreaterThan(answers[index - 1].likelyStems);
      });
      offered += answers.length - 1;
    }
    expect(offered).toBeGreaterThan(5);
  });

  test("[E5] the nearest day that has it is the one found by saving the booking on every day in turn", () => {
    let found = 0;
    for (const seed of seeds(8)) {
      const farm = smallFarm(seed);
      const planned = provenPlan(farm, 2027);
      const poor = poorMatches(planned);
      const enquiry = { ...seededEnquiry(farm, seed), stemCount: 10 + 3 * seed };
      const asked = enquiryAnswer(planned, poor, enquiry);
      const today = addDays(enquiry.eventOn, -60);
      const days = sameWeekdays(enquiry.eventOn, today);
      const nearest = nearestThatHas([...onOtherDays(planned, poor, asked, days)], enquiry.stemCount);
      const { colours = [], ...said } = nearest ?? {};
      expect(nearest && said).toEqual(nearestBySaving(planned, poor, enquiry, today));
      expect(colours.every(({ colour }) => enquiry.colours.length === 0 || enquiry.colours.includes(colour))).toBe(
        true,
      );
      if (nearest) found++;
    }
    expect(found).toBeGreaterThan(2);
  });

  test("[E5] [M8] after New Year every other day says what asking for it alone says, of whatever was cut or kept in December", () => {
    let had = 0;
    for (const seed of seeds(30)) {
      const given = aroundNewYear(seed);
      const [{ id: bedId }] = given.beds;
      const december = given.coolerStock.filter(({ cutOn }) => cutOn < day("2028-01-01"));
      const farm: Snapshot = {
        ...given,
        bookings: given.bookings.filter(({ eventOn }) => eventOn >= day("2028-01-06")),
        coolerStock: given.coolerStock.filter((lot) => !december.includes(lot) || lot.id % 3 === 0),
        cuts: december.map(({ stemCount, ...lot }) => ({ ...lot, ...CUT_FOR_ANYBODY, bedId, stemsCut: stemCount })),
      };
      const planned = provenPlan(farm, 2028, undefined, undefined, toDayNumber(day("2027-12-31")));
      const poor = poorMatches(planned);
      const enquiry = { ...seededEnquiry(given, seed), eventOn: day("2028-01-29"), stemCount: 30 };
      const asked = enquiryAnswer(planned, poor, enquiry);
      const days = sameWeekdays(enquiry.eventOn, day("2027-12-31")).filter((one) => one < day("2028-02-29"));
      for (const { day: eventOn, likelyStems, promisedStems } of onOtherDays(planned, poor, asked, days)) {
        const alone = enquiryAnswer(planned, poor, { ...enquiry, eventOn });
        expect([likelyStems, promisedStems]).toEqual([alone.likelyStems, alone.promisedStems]);
        if (likelyStems > 0) had++;
      }
    }
    expect(had).toBeGreaterThan(10);
  });
});

const gotStems = ({ match }: Plan, bookingId: number): number =>
  match.needs.reduce(
    (sum, { booking, stems }, index) => (booking.id === bookingId ? sum + stems - match.shortStems[index] : sum),
    0,
  );

/** Stems that needs are short of more in one plan of a farm than in another. */
function lostStems(before: Plan, after: Plan): number {
  const short = ({ match }: Plan) =>
    new Map(match.needs.map((need, index) => [`${need.booking.id} ${need.kind}`, match.shortStems[index]]));
  const shortBefore = short(before);
  return [...short(after)]
    .filter(([key]) => shortBefore.has(key))
    .reduce((sum, [key, stems]) => sum + Math.max(0, stems - (shortBefore.get(key) ?? 0)), 0);
}

type Said = Omit<OtherDay, "colours">;

/** The nearest day by asking every day of the year anew: each saved as a booking and planned, in the plan's year and in poor ones. */
function nearestBySaving(planned: Plan, poor: readonly Match[], enquiry: Enquiry, today: Day): Said | null {
  const { snapshot: farm, match } = planned;
  const buyIn = buyInFinder(farm);
  const held = { ...heldBooking(enquiry, farm.farm), client: "The caller", id: 100_000 };
  const rows: (Said & { away: number })[] = [];
  for (let number = toDayNumber(day("2027-01-01")); number <= toDayNumber(day("2027-12-31")); number++) {
    const away = number - toDayNumber(enquiry.eventOn);
    if (away === 0 || away % 7 !== 0 || toDay(number) < today) continue;
    const saved = { ...held, eventOn: toDay(number) };
    const needs = provenPlan({ ...farm, bookings: [...farm.bookings, saved] }, 2027).match.needs;
    const callers = [match, ...poor].map((year) => {
      const after = matchOf(farm.farm, year.supplies, needs, buyIn);
      const [alone, together] = [{ match: year } as Plan, { match: after } as Plan];
      const counted = Math.max(0, gotStems(together, saved.id) - lostStems(alone, together));
      return Math.min(enquiry.stemCount, stemsWithoutSpare(counted, farm.farm.spareShare));
    });
    rows.push({
      day: toDay(number),
      likelyStems: callers[0],
      promisedStems: Math.min(...callers),
      away: Math.abs(away),
    });
  }
  const byDistance = rows.toSorted((a, b) => a.away - b.away || (a.day < b.day ? -1 : 1));
  const nearest =
    byDistance.find(({ promisedStems }) => promisedStems === enquiry.stemCount) ??
    byDistance.find(({ likelyStems }) => likelyStems === enquiry.stemCount);
  if (!nearest) return null;
  const { away: _, ...found } = nearest;
  return found;
}

/** What each need had in a match of the farm without the enquiry, by its place in the match with it. */
function keptIn(before: Match, after: Match): (needIndex: number) => number {
  const had = new Map(before.needs.map((need, index) => [need, need.stems - before.shortStems[index]]));
  return (needIndex) => had.get(after.needs[needIndex]) ?? 0;
}
