import { describe, expect, test } from "vitest";
import type { Enquiry } from "#lib/domain/records/enquiry";
import type { Snapshot } from "#lib/domain/snapshot";
import { OWN } from "#lib/domain/sourced";
import { enquiryAnswer } from "#lib/plan/road/enquiry";
import { nearestThatHas, onOtherDays, sameWeekdays } from "#lib/plan/road/enquiry-days";
import { buyInOffer, colourOffers } from "#lib/plan/road/enquiry-offers";
import { poorMatches } from "#lib/plan/road/unusual-years";
import { provenPlan } from "../../proven-plan";
import { booking, crop, curve, day, farm, focal, planting, snapshot, variety } from "../../small-farm";

const SATURDAY = day("2027-06-12");
const asks = (stemCount: number, given: Partial<Enquiry> = {}): Enquiry => ({
  stemCount,
  colours: [],
  role: "focal",
  eventOn: SATURDAY,
  ...given,
});
/** Every year is alike: what is likely can be promised. */
const evenYears = { curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0 })] };
const answerOn = (given: Partial<Snapshot>, enquiry: Enquiry) => {
  const planned = provenPlan(snapshot({ ...evenYears, ...given }), 2027);
  return enquiryAnswer(planned, poorMatches(planned), enquiry);
};

describe("what can be said to a caller", () => {
  /** 30 cream stems in reach of the Saturday; the farm adds a tenth: 20 stems need 22, and 30 are enough for 27. */
  test("[E1] of 30 stems in reach 20 are promised to who asks 20, and 27 to who asks 40", () => {
    expect(answerOn({}, asks(20))).toMatchObject({ verdict: "yes", promisedStems: 20, needStems: 22 });
    expect(answerOn({}, asks(40))).toMatchObject({
      verdict: "partly",
      promisedStems: 27,
      likelyStems: 27,
      needStems: 44,
    });
    expect(answerOn({}, asks(5, { role: "foliage" }))).toMatchObject({ verdict: "no", promisedStems: 0 });
  });

  /** 22 asked with spare and 20 held by an enquiry, whose claim is weaker: it would lose 12 of its 20, so 10 of the 22 count, which serve 9. */
  test("[E1] stems that another would lose are not promised, and who would lose them is named", () => {
    const bookings = [booking({ id: 1, status: "enquiry", stemLines: focal(20) })];
    const answer = answerOn({ bookings }, asks(20));
    expect([answer.verdict, answer.promisedStems, answer.likelyNeedStems]).toEqual(["partly", 9, 10]);
    expect(answer.losers.map(({ booking: { id }, stems }) => [id, stems])).toEqual([[1, 12]]);
  });

  /** Half a spread of yield leaves 16 of 30 stems in the poor years, which are enough for 14 with a tenth of spare. */
  test("[E2] [G6] of 30 likely stems a poor year leaves 16: 14 are promised, and 27 are likely", () => {
    const oneFrost = { ...farm().frost, firstAutumnP10: farm().frost.firstAutumnP50 };
    const curves = [curve({ firstCutSpreadDays: 0, yieldSpread: 0.5 })];
    const given = { farm: farm({ frost: oneFrost }), curves };
    const answer = (stemCount: number) => {
      const { verdict, promisedStems, likelyStems } = answerOn(given, asks(stemCount));
      return [verdict, promisedStems, likelyStems];
    };
    expect(answer(14)).toEqual(["yes", 14, 14]);
    expect(answer(27)).toEqual(["likely", 14, 27]);
    expect(answer(40)).toEqual(["partly", 14, 27]);
  });

  test("a day of another year is no question for the plan", () => {
    expect(() => answerOn({}, asks(1, { eventOn: day("2028-06-12") }))).toThrow(RangeError);
  });

  const stored = snapshot({
    crops: [crop({ id: 1, holdDays: { count: 10, ...OWN } })],
    plantings: [],
    coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-12-30"), stemCount: 30 }],
  });

  test("[E1] [M8] a day in January is answered with the stems of the December before", () => {
    const planned = provenPlan(stored, 2028);
    expect(planned.meetingSeasons).toEqual([2028]);
    const answer = enquiryAnswer(planned, poorMatches(planned), asks(40, { eventOn: day("2028-01-02") }));
    expect([answer.promisedStems, answer.likelyNeedStems]).toEqual([27, 30]);
  });

  test("[E4] [E5] [M8] and so are another day in January and another colour there", () => {
    const planned = provenPlan(stored, 2028);
    const poor = poorMatches(planned);
    const later = enquiryAnswer(planned, poor, asks(40, { eventOn: day("2028-01-16") }));
    const days = [...onOtherDays(planned, poor, later, [day("2028-01-02"), day("2028-01-23")])];
    expect(days.map(({ promisedStems, likelyStems }) => [promisedStems, likelyStems])).toEqual([
      [27, 27],
      [0, 0],
    ]);
    const white = enquiryAnswer(planned, poor, asks(40, { colours: ["white"], eventOn: day("2028-01-02") }));
    expect([...colourOffers(planned, poor, white)].map(({ added }) => added)).toEqual([["cream"]]);
  });
});

describe("what could be done", () => {
  const twoColours = {
    varieties: [variety({ id: 1 }), variety({ id: 2, colour: "blush" }), variety({ id: 3, colour: "plum" })],
    plantings: [1, 2, 3].map((id) => planting({ id, varietyId: id })),
  };

  test("[E4] 30 cream stems are 27 for a caller; with blush welcome too it is 40 of 40, and plum is not near", () => {
    const planned = provenPlan(snapshot({ ...evenYears, ...twoColours }), 2027);
    const poor = poorMatches(planned);
    const asked = enquiryAnswer(planned, poor, asks(40, { colours: ["cream"] }));
    expect([asked.verdict, asked.promisedStems]).toEqual(["partly", 27]);
    const offers = [...colourOffers(planned, poor, asked)];
    expect(offers.map(({ added, answer }) => [added, answer.promisedStems])).toEqual([[["blush"], 40]]);
  });

  test("[E4] who takes any colour is offered none", () => {
    const planned = provenPlan(snapshot({ ...evenYears, ...twoColours }), 2027);
    const asked = enquiryAnswer(planned, [], asks(400));
    expect([...colourOffers(planned, [], asked)]).toEqual([]);
  });

  /** 44 with spare less 30 are 14 short: two bunches of ten at 3 dollars a stem, ordered 21 days before. */
  test("[B1] 14 stems short are two bunches for 60 dollars, to order by 22 May; what is promised in full needs none", () => {
    const planned = provenPlan(snapshot(evenYears), 2027);
    const poor = poorMatches(planned);
    expect(buyInOffer(planned, enquiryAnswer(planned, poor, asks(40)))).toMatchObject({
      ordinary: { bunchCount: 2, costCents: 6000 },
      poorest: { bunchCount: 2, costCents: 6000 },
      orderBy: "2027-05-22",
    });
    expect(buyInOffer(planned, enquiryAnswer(planned, poor, asks(20)))).toBeNull();
    expect(buyInOffer(planned, enquiryAnswer(planned, poor, asks(20, { role: "foliage" })))).toBeNull();
  });

  test("[E5] Saturdays before and after, the nearest first and the earlier of two, none that is past and none of another year", () => {
    const days = sameWeekdays(SATURDAY, day("2027-06-01"));
    expect(days.slice(0, 3)).toEqual(["2027-06-05", "2027-06-19", "2027-06-26"]);
    expect(days.at(-1)).toBe("2027-12-25");
    expect(sameWeekdays(day("2027-01-02"), day("2026-11-25")).slice(0, 1)).toEqual(["2027-01-09"]);
  });

  test("[E5] a day on which all can be promised goes before a nearer one on which all is only likely", () => {
    const on = (text: string, promisedStems: number, likelyStems: number) => ({
      day: day(text),
      promisedStems,
      likelyStems,
    });
    const likely = on("2027-06-05", 3, 10);
    const sure = on("2027-06-26", 10, 10);
    expect(nearestThatHas([likely, sure], 10)).toBe(sure);
    expect(nearestThatHas([on("2027-06-19", 0, 9), likely], 10)).toBe(likely);
    expect(nearestThatHas([likely], 11)).toBeNull();
  });
});
