import { expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { inShort, toDay } from "#lib/domain/day";
import { buyingSlips, buyingTotals } from "#lib/plan/road/buying-slips";
import { forWhomInWords, lateInWords, orderText, purchasesInWords } from "#lib/plan/words/buying-words";
import { provenPlan } from "../../proven-plan";

const { buying, snapshot } = provenPlan(demoSnapshot(), 2027);
const slips = buyingSlips(buying);

test("slips share the purchases out without loss, the first to order first, each for one day of arrival", () => {
  expect(slips.flatMap(({ lines }) => lines).length).toBe(buying.length);
  expect(slips.reduce((sum, { lines }) => sum + buyingTotals(lines).costCents, 0)).toBe(buyingTotals(buying).costCents);
  const days = slips.map(({ arriveBy }) => arriveBy);
  expect(days).toEqual([...new Set(days)].sort((a, b) => a - b));
  for (const { arriveBy, orderBy, lines, bookings } of slips) {
    for (const { gap, orderBy: ofLine } of lines) {
      expect(gap.need.eventDay - arriveBy).toBe(snapshot.farm.leadDays);
      expect(ofLine).toBe(orderBy);
      expect(bookings).toContain(gap.need.booking);
    }
  }
});

test("of two weddings on Saturday 26 June all arrives on Thursday the 24th, on one slip, to be read out line by line", () => {
  const slip = slips.find(({ arriveBy }) => toDay(arriveBy) === "2027-06-24");
  expect(slip?.bookings.map(({ client }) => client)).toEqual(["Tithe Meadow wedding", "Cressbank wedding"]);
  const [first, ...lines] = slip ? orderText(slip).split("\n") : [];
  expect(first).toBe("To arrive by Thu 24 Jun:");
  expect(lines).toHaveLength(slip?.lines.length ?? 0);
  for (const line of lines) expect(line).toMatch(/^\d+ bunch(es)? of \d+ [a-z ]+, [a-z, ]+$/);
});

test("in words: for whom, how late, and how much", () => {
  const three = slips.slice(0, 3);
  expect(forWhomInWords(three.slice(0, 1))).toBe(`for ${three[0].bookings[0].client}`);
  expect(forWhomInWords(slips)).toMatch(/^for .+, .+, .+ and .+ others$/);
  const first = three[0].orderBy;
  expect(lateInWords(three.slice(0, 1), first + 1)).toMatch(/^Call now: they were to be ordered by .+, 1 day ago\.$/);
  expect(lateInWords(three, first + 12)).toContain(`${inShort(toDay(first))}, 12 days ago`);
  expect(purchasesInWords(buying)).toMatch(/^\d+ bunches, about \$[\d,]+$/);
});
