import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import type { Enquiry } from "#lib/domain/records/enquiry";
import { enquiryAnswer } from "#lib/plan/road/enquiry";
import { poorMatches } from "#lib/plan/road/unusual-years";
import { keepOffer } from "#lib/plan/what-if/enquiry-keep";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { bedsKeptNow } from "#lib/plan/winter/kept-beds";
import { provenPlan } from "../../proven-plan";
import { day } from "../../small-farm";

const NOVEMBER = day("2026-11-25");
const demo = demoSnapshot();
const stands = provenPlan(demo, 2027);
const poor = poorMatches(stands);
const blush: Enquiry = { stemCount: 120, colours: ["blush"], role: "focal", eventOn: day("2027-06-19") };
const asked = enquiryAnswer(stands, poor, blush);

describe("keeping beds for an enquiry", () => {
  test("[E6] what these beds bring is the answer of the farm planned anew with them kept, and it is more", () => {
    const offer = keepOffer(stands, asked, NOVEMBER);
    expect(offer).not.toBeNull();
    if (!offer) return;
    const kept = [...bedsKeptNow(demo, 2027).map(({ bed }) => bed.id), ...offer.beds.map(({ id }) => id)];
    const planned = provenPlan(withKeptBeds(demo, 2027, kept), 2027);
    const { promisedStems, likelyStems } = enquiryAnswer(planned, poorMatches(planned), blush);
    expect([offer.answer.promisedStems, offer.answer.likelyStems]).toEqual([promisedStems, likelyStems]);
    expect(likelyStems).toBeGreaterThan(asked.likelyStems);
    expect(offer.beds.length).toBeLessThanOrEqual(3);
  });

  test("[E6] none is offered once tubers go back into the ground, nor for a day on which no kept dahlia blooms, nor for what can be promised", () => {
    expect(keepOffer(stands, asked, day("2027-05-30"))).toBeNull();
    const inApril = enquiryAnswer(stands, poor, { ...blush, eventOn: day("2027-04-17") });
    expect(keepOffer(stands, inApril, NOVEMBER)).toBeNull();
    const few = enquiryAnswer(stands, poor, { ...blush, colours: [], stemCount: 1, eventOn: day("2027-09-04") });
    expect(few.verdict).toBe("yes");
    expect(keepOffer(stands, few, NOVEMBER)).toBeNull();
  });

  test("[E6] [K2] a bed with a flag is not offered, and the next best is", () => {
    const many: Enquiry = { ...blush, stemCount: 400, colours: ["blush", "pink", "peach", "coral"] };
    const [first] = keepOffer(stands, enquiryAnswer(stands, poor, many), NOVEMBER)?.beds ?? [];
    const flagged = {
      ...demo,
      beds: demo.beds.map((bed) => (bed.id === first.id ? { ...bed, flags: ["wet soil" as const] } : bed)),
    };
    const planned = provenPlan(flagged, 2027);
    const offer = keepOffer(planned, enquiryAnswer(planned, poorMatches(planned), many), NOVEMBER);
    expect(offer?.beds.length).toBeGreaterThan(0);
    expect(offer?.beds.map(({ id }) => id)).not.toContain(first.id);
  });
});
