import { expect, test } from "vitest";
import { buckets } from "#lib/maths/buckets";
import { seededRandom, wholeBetween } from "#lib/maths/random";

test("5 to 9 by what is left of a division by 3: 6 and 9, 7, 5 and 8", () => {
  const { start, members } = buckets(3, 5, 10, (member) => member % 3);
  expect([[...start], [...members]]).toEqual([
    [0, 2, 3, 5],
    [6, 9, 7, 5, 8],
  ]);
});

test("a number whose bucket is below 0 is left out, and a bucket may be empty", () => {
  const { start, members } = buckets(2, 0, 4, (member) => (member === 2 ? 1 : -1));
  expect([[...start], [...members]]).toEqual([[0, 0, 1], [2]]);
});

test("seed 7: each bucket is what a filter finds", () => {
  const random = seededRandom(7);
  for (let round = 0; round < 100; round++) {
    const bucketOf = Array.from({ length: wholeBetween(random, 0, 40) }, () => wholeBetween(random, -1, 5));
    const { start, members } = buckets(6, 0, bucketOf.length, (member) => bucketOf[member]);
    for (let bucket = 0; bucket < 6; bucket++)
      expect([...members.slice(start[bucket], start[bucket + 1])]).toEqual(
        [...bucketOf.keys()].filter((member) => bucketOf[member] === bucket),
      );
  }
});
