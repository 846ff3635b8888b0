import { expect, test } from "vitest";
import { z } from "zod";
import { problemsOf } from "#lib/domain/problem";

const rows = z.object({
  plantings: z.array(z.object({ plantCount: z.int("write whole plants"), firstCut: z.string("write a day") })),
});

const problemsIn = (given: unknown, root?: string) => {
  const parsed = rows.safeParse(given);
  return parsed.success ? [] : problemsOf(parsed.error, root);
};

test("every problem is listed at once, each with its place", () => {
  const given = {
    plantings: [
      { plantCount: 3, firstCut: "x" },
      { plantCount: 1.5, firstCut: null },
    ],
  };
  expect(problemsIn(given)).toEqual([
    { place: "plantings[1].plantCount", message: "write whole plants" },
    { place: "plantings[1].firstCut", message: "write a day" },
  ]);
});

test("the place starts at the name of what was parsed", () => {
  const given = { plantings: [{ plantCount: 1.5, firstCut: "x" }] };
  expect(problemsIn(given, "farm.csv")).toEqual([
    { place: "farm.csv.plantings[0].plantCount", message: "write whole plants" },
  ]);
});

test("a problem of the whole has the place of the whole", () => {
  expect(problemsIn("not rows", "bookings[7]")[0].place).toBe("bookings[7]");
});
