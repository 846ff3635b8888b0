import { describe, expect, test } from "vitest";
import type { Enquiry } from "#lib/domain/records/enquiry";
import type { Snapshot } from "#lib/domain/snapshot";
import { enquiryAnswer } from "#lib/plan/road/enquiry";
import { buyInOffer, colourOffers } from "#lib/plan/road/enquiry-offers";
import { poorMatches } from "#lib/plan/road/unusual-years";
import {
  buyInWords,
  holdNote,
  missingColours,
  mostLeftWords,
  nearestWords,
  noBuyInWords,
  notPlantedWords,
  stemsNoun,
  toTheCaller,
  verdictWords,
} from "#lib/plan/words/enquiry-words";
import { provenPlan } from "../../proven-plan";
import { curve, day, farm, planting, snapshot, variety } from "../../small-farm";

const cream = (stemCount: number, given: Partial<Enquiry> = {}): Enquiry => ({
  stemCount,
  colours: ["cream"],
  role: "focal",
  eventOn: day("2027-06-12"),
  ...given,
});

/** 30 cream, 30 blush and 30 plum stems in reach; in poor years 16 of each. */
const uneven: Partial<Snapshot> = {
  farm: farm({ frost: { ...farm().frost, firstAutumnP10: farm().frost.firstAutumnP50 } }),
  curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0.5 })],
  varieties: [variety({ id: 1 }), variety({ id: 2, colour: "blush" }), variety({ id: 3, colour: "plum" })],
  plantings: [1, 2, 3].map((id) => planting({ id, varietyId: id })),
};
const even: Partial<Snapshot> = { ...uneven, curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0 })] };

function asked(enquiry: Enquiry, given = even) {
  const plan = provenPlan(snapshot(given), 2027);
  const poor = poorMatches(plan);
  const answer = enquiryAnswer(plan, poor, enquiry);
  const offers = [...colourOffers(plan, poor, answer)];
  return { answer, offers, buyIn: buyInOffer(plan, offers.at(-1)?.answer ?? answer) };
}
const alone = (enquiry: Enquiry, given = even) =>
  toTheCaller(asked(enquiry, given).answer, { offers: [], buyIn: null, nearest: null });

describe("what is read to the caller", () => {
  test("[E2] a promise, a promise with what is likely, what is only likely, and nothing, each in its words", () => {
    expect(alone(cream(20))).toBe("For Saturday the 12th of June I can promise all 20 cream stems.");
    expect(alone(cream(1))).toBe("For Saturday the 12th of June I can promise 1 cream stem.");
    expect(alone(cream(27), uneven)).toBe(
      "For Saturday the 12th of June I can promise 14 cream stems; all 27 are likely.",
    );
    expect(alone(cream(40), uneven)).toBe("For Saturday the 12th of June I can promise 14 cream stems; 27 are likely.");
    expect(alone(cream(40, { colours: ["blue"] }))).toBe("For Saturday the 12th of June I have no blue stems.");
  });

  test("[E4] a colour asked of which there is none is said, and a near one that is welcome is named", () => {
    const { answer, offers, buyIn } = asked(cream(90, { colours: ["cream", "blue"] }));
    expect(missingColours(answer)).toEqual(["blue"]);
    expect(toTheCaller(answer, { offers, buyIn, nearest: null })).toBe(
      "For Saturday the 12th of June I can promise 27 stems in cream or blue. None of them would be blue. " +
        "If blush is welcome too, I can promise 54. The other 36 I would buy in.",
    );
  });

  test("[B1] what is likely and not promised is only bought in if a poor year lacks it", () => {
    const { answer, buyIn } = asked(cream(27), uneven);
    expect(toTheCaller(answer, { offers: [], buyIn, nearest: null })).toMatch(
      /all 27 are likely\. What a poor year lacks I would buy in\.$/,
    );
  });

  test("[E4] a near colour that brings less than a tenth of what is asked is not read out", () => {
    const few = { ...even, plantings: [planting({ id: 1 }), planting({ id: 2, varietyId: 2, plantCount: 7 })] };
    const { answer, offers } = asked(cream(90), few);
    expect(offers).toHaveLength(1);
    expect(toTheCaller(answer, { offers, buyIn: null, nearest: null })).not.toContain("blush");
  });

  test("[E5] the nearest day that has it is named, promised or likely", () => {
    const { answer } = asked(cream(40));
    const on = (promisedStems: number) => ({ day: day("2027-06-19"), promisedStems, likelyStems: 40, colours: [] });
    const said = (promisedStems: number) =>
      toTheCaller(answer, { offers: [], buyIn: null, nearest: on(promisedStems) });
    expect(said(40)).toContain("All 40 in cream I can promise for Saturday the 19th of June.");
    expect(said(3)).toContain("All 40 in cream are likely on Saturday the 19th of June.");
    expect(nearestWords([on(40)], 40)).toBe("The nearest that can promise all 40: Sat 19 Jun.");
    expect(nearestWords([on(3)], 40)).toBe(
      "On none can all 40 be promised; the nearest on which all 40 are likely: Sat 19 Jun.",
    );
    expect(nearestWords([on(3)], 41)).toBe("None of them has all 41.");
  });

  test("one stem is not all of them: it is promised, likely, bought in or had on another day by itself", () => {
    const nothingInPoorYears = { ...uneven, curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 2 })] };
    expect(alone(cream(1), nothingInPoorYears)).toBe(
      "For Saturday the 12th of June 1 cream stem is likely; I cannot promise it yet.",
    );
    expect(verdictWords(asked(cream(1)).answer).head).toBe("Yes: 1");
    const { answer, offers, buyIn } = asked(cream(1, { colours: ["white"] }));
    expect(toTheCaller(answer, { offers, buyIn: null, nearest: null })).toMatch(/welcome too, I can promise 1\.$/);
    const nearest = { day: day("2027-06-19"), promisedStems: 0, likelyStems: 1, colours: [] };
    expect(toTheCaller(answer, { offers: [], buyIn, nearest })).toBe(
      "For Saturday the 12th of June I have no white stems. 1 in white is likely on Saturday the 19th of June.",
    );
    expect(
      toTheCaller(answer, { offers: [], buyIn: buyInOffer(provenPlan(snapshot(even), 2027), answer), nearest: null }),
    ).toMatch(/I would buy it in\.$/);
  });
});

test("[E2] the answer in a word: yes, likely, partly, perhaps, none, with its numbers", () => {
  const said = (enquiry: Enquiry, given?: Partial<Snapshot>) => {
    const { head, rest } = verdictWords(asked(enquiry, given).answer);
    return `${head} / ${rest}`;
  };
  expect(said(cream(20))).toBe("Yes: all 20 / in cream. A poor year, one in ten, leaves as many.");
  expect(said(cream(27), uneven)).toBe("Likely: all 27 / in cream; 14 can be promised, what a poor year leaves.");
  expect(said(cream(40), uneven)).toBe("Partly: 14 / of 40 in cream can be promised; 27 are likely.");
  expect(said(cream(40, { colours: ["blue"] }))).toBe("None / of 40 in blue can be had for that day.");
  const nothingInPoorYears = { ...uneven, curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 2 })] };
  expect(said(cream(40), nothingInPoorYears)).toMatch(/^Perhaps 27 \/ of 40 in cream; none can be promised/);
});

test("stems are called by their colour and role", () => {
  const noun = (role: Enquiry["role"], colours: Enquiry["colours"], count = 2) => stemsNoun({ role, colours }, count);
  expect(noun("focal", ["blush"])).toBe("blush stems");
  expect(noun("focal", ["blush", "cream"], 1)).toBe("stem in blush or cream");
  expect(noun("filler", [])).toBe("filler stems");
  expect(noun("foliage", ["green"])).toBe("green stems of foliage");
});

test("[B1] what buying in takes is said for an ordinary and for a poor year, with its mark and its day; or why there is none", () => {
  const { buyIn, answer } = asked(cream(40, { colours: ["cream", "blush", "plum"], stemCount: 90 }), uneven);
  expect(buyIn && buyInWords(buyIn)).toBe(
    "1 bunch, $30; in a poor year 6 bunches, $180. Priced as cream crop 1 at 10 a bunch (own); order by Sat 22 May.",
  );
  expect(noBuyInWords(buyIn, answer.enquiry)).toBe("It is too late to buy in: the order was due by Sat 22 May.");
  expect(noBuyInWords(null, { role: "foliage", colours: [] })).toBe(
    "No foliage is to be had from others in that month.",
  );
  expect(notPlantedWords(["blue", "silver"], answer.enquiry, 2027)).toBe(
    "No blue or silver focal is planted for 2027.",
  );
});

test("a hold says when it was asked, and what", () => {
  expect(holdNote(cream(40), day("2026-11-25"))).toBe("Asked on Wednesday 25 November 2026: 40 cream stems.");
});

test("of days on which nothing was asked it is said which can promise the most, and on how many none can be", () => {
  const on = (text: string, promisedStems: number) => ({ day: day(text), promisedStems, likelyStems: 9, colours: [] });
  expect(mostLeftWords([on("2027-06-12", 3), on("2027-06-19", 8), on("2027-06-26", 0)])).toBe(
    "The most can be promised on Sat 19 Jun: 8 stems. On 1 Saturday none can be: a poor year, one in ten, leaves nothing.",
  );
  expect(mostLeftWords([on("2027-06-12", 3)])).toBe("The most can be promised on Sat 12 Jun: 3 stems.");
  expect(mostLeftWords([on("2027-06-12", 0)])).toMatch(/^None can be promised/);
});
