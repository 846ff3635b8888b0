import { expect, test } from "vitest";
import { oneOf, seededRandom, wholeBetween } from "#lib/maths/random";

const draws = (seed: number, count: number) => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, random);
};

test("the same seed gives the same numbers, another seed others", () => {
  expect(draws(7, 100)).toEqual(draws(7, 100));
  expect(draws(7, 100)).not.toEqual(draws(8, 100));
});

test("100,000 numbers lie from 0 up to 1 and fill 100 equal bins evenly: chi-squared below 148.2, passed by one run in 1,000", () => {
  const numbers = draws(20270612, 100_000);
  expect(numbers.every((number) => number >= 0 && number < 1)).toBe(true);
  const bins = new Array<number>(100).fill(0);
  for (const number of numbers) bins[Math.floor(number * 100)]++;
  const chiSquared = bins.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
  /** The 0.999 quantile of chi-squared with 99 degrees of freedom (statistical tables; from memory). */
  expect(chiSquared).toBeLessThan(148.2);
});

test("neighbouring numbers do not go together: their correlation over 100,000 is below 1 in 100", () => {
  const numbers = draws(3, 100_000);
  const products = numbers.slice(1).map((number, index) => (number - 0.5) * (numbers[index] - 0.5));
  const covariance = products.reduce((sum, product) => sum + product, 0) / products.length;
  expect(Math.abs(covariance / (1 / 12))).toBeLessThan(0.01);
});

test("a whole number between 3 and 5 is 3, 4 or 5, each about a third of the time", () => {
  const random = seededRandom(1);
  const counts = new Map<number, number>();
  for (let time = 0; time < 30_000; time++) {
    const whole = wholeBetween(random, 3, 5);
    counts.set(whole, (counts.get(whole) ?? 0) + 1);
  }
  expect([...counts.keys()].sort()).toEqual([3, 4, 5]);
  for (const count of counts.values()) expect(Math.abs(count - 10_000)).toBeLessThan(400);
});

test("one of three choices is each of them in turn of chance, and there must be one", () => {
  const random = seededRandom(2);
  const chosen = new Set(Array.from({ length: 100 }, () => oneOf(random, ["blush", "cream", "plum"])));
  expect([...chosen].sort()).toEqual(["blush", "cream", "plum"]);
  expect(() => oneOf(random, [])).toThrow(new RangeError("choices must not be empty"));
});
