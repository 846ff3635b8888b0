import fc from "fast-check";
import { expect, test } from "vitest";
import { answeredTally, counted, goingOut, isOnlyHere, isShownBy, toSend, unsentIn } from "#lib/domain/unsent";
import { anySeed } from "../plan/any-farm";

const tally = (key: string, countedAt = "2027-06-10T05:40:00Z") => ({
  ...{ key, countedAt, cutOn: "2027-06-10", bedId: 1, varietyId: 2, asked: [[3, 9]] as const },
  ...{ stemsCut: 9, seenStems: 0, seenRevision: 4 },
});

test("a count can be taken back on the phone until it goes out, and is sent until the farm has answered", () => {
  const fresh = counted(tally("a"), "D4, Dahlia Mint");
  expect([isOnlyHere(fresh), toSend([fresh], 5).length]).toEqual([true, 1]);
  const out = goingOut(fresh);
  expect([isOnlyHere(out), toSend([out], 5).length]).toEqual([false, 1]);
  const taken = answeredTally(out, [{ key: "a", problems: [] }], 12);
  expect([taken.state, toSend([taken], 5).length]).toEqual(["taken", 0]);
});

test("the answer to another count changes nothing; a refusal keeps the count with its reasons", () => {
  const out = goingOut(counted(tally("a"), "D4"));
  expect(answeredTally(out, [{ key: "b", problems: [] }], 12)).toBe(out);
  const refused = answeredTally(out, [{ key: "a", problems: ["this bed is not on the farm"] }], 12);
  expect([refused.state, refused.problems]).toEqual(["refused", ["this bed is not on the farm"]]);
});

test("a count is kept until a page shows it that was made of the farm with it", () => {
  const taken = answeredTally(counted(tally("a"), "D4"), [{ key: "a", problems: [] }], 12);
  expect([11, 12, 13].map((revision) => isShownBy(taken, revision))).toEqual([false, true, true]);
  expect(isShownBy(counted(tally("a"), "D4"), 99)).toBe(false);
});

test("the oldest counts go out first, and no more at once than asked for", () => {
  const times = ["07", "05", "06"].map((hour) => counted(tally(hour, `2027-06-10T${hour}:00:00Z`), "D4"));
  expect(toSend(times, 2).map(({ tally: { key } }) => key)).toEqual(["05", "06"]);
});

test("what a phone keeps comes back as it was, and anything else in its storage is none of ours", () => {
  fc.assert(
    fc.property(fc.anything(), fc.nat(), (anything, stemsCut) => {
      const unsent = counted({ ...tally("a"), stemsCut }, "D4");
      expect(unsentIn(JSON.stringify(unsent))).toEqual(unsent);
      expect(unsentIn(JSON.stringify({ ...unsent, tally: anything }) ?? null)).toBeNull();
      expect(unsentIn(String(anything))).toBeNull();
    }),
    { ...anySeed, numRuns: 200 },
  );
});
