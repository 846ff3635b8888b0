import { expect, test } from "vitest";
import { type Learned, learnedFor, unlearned } from "#lib/domain/records/learned";

const lesson = (fromSeason: number, laterDays: number, yieldFactor: number): Learned => ({
  fromSeason,
  laterDays,
  yieldFactor,
});

test("[F16] a lesson counts from its season until the next that is told", () => {
  const learned = [lesson(2028, 4, 0.9), lesson(2030, 4, 1)];
  const factors = [2027, 2028, 2029, 2030].map((season) => learnedFor({ learned }, season).yieldFactor);
  expect(factors).toEqual([1, 0.9, 0.9, 1]);
});

test("[F16] with its days forgotten a curve has in each season the stems that it had, also where a later lesson took them back", () => {
  const learned = [lesson(2028, 4, 0.9), lesson(2030, 4, 1)];
  const rest = unlearned(learned, "laterDays");
  for (const season of [2027, 2028, 2029, 2030, 2031])
    expect(learnedFor({ learned: rest }, season)).toMatchObject({
      laterDays: 0,
      yieldFactor: learnedFor({ learned }, season).yieldFactor,
    });
});

test("a curve that learned of one part alone has learned nothing once that is forgotten", () => {
  expect(unlearned([lesson(2028, 4, 1), lesson(2029, 6, 1)], "laterDays")).toEqual([]);
  expect(unlearned([lesson(2028, 0, 0.8)], "yieldFactor")).toEqual([]);
});
