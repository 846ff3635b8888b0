import { expect, test } from "vitest";
import { SignInPace } from "../../../app/people/sign-in-pace";

const pace = () => {
  const clock = { at: 0 };
  return { clock, pace: new SignInPace(() => clock.at) };
};
/** Tries for so many seconds as often as it may, each wrong; gives how often that was. */
function triesIn(seconds: number, sender: (count: number) => string): number {
  const { clock, pace: tried } = pace();
  let count = 0;
  for (; clock.at < seconds; clock.at++)
    while (tried.wait(sender(count)) === 0 && count < 10_000) tried.wrong(sender(count++));
  return count;
}

test("two wrong tries are free; after the third each further one doubles the wait: 1, 2, 4 … 300 seconds", () => {
  const { clock, pace: tried } = pace();
  const waits = Array.from({ length: 13 }, () => {
    tried.wrong("a");
    const wait = tried.wait("a");
    clock.at += wait;
    return wait;
  });
  expect(waits).toEqual([0, 0, 1, 2, 4, 8, 16, 32, 64, 128, 256, 300, 300]);
});

test("a right try forgets the wrong ones before it, and one sender's wrong tries make no other wait", () => {
  const { pace: tried } = pace();
  for (let count = 0; count < 5; count++) tried.wrong("a");
  expect([tried.wait("a"), tried.wait("b")]).toEqual([4, 0]);
  tried.right("a");
  expect(tried.wait("a")).toBe(0);
});

test("one sender that never stops has some twenty tries in an hour, and all senders together a hundred", () => {
  expect(triesIn(3600, () => "a")).toBeLessThan(25);
  expect(triesIn(3599, (count) => `sender ${count}`)).toBe(100);
});
