import { expect, test } from "vitest";
import { MARKS, type Mark, originInWords } from "#lib/domain/sourced";

test("an origin says its mark, and its source where it has one", () => {
  const words = (mark: Mark, source: string | null) => originInWords({ mark, source });
  expect(words("published", "DOLE-DAHLIA")).toBe("published, DOLE-DAHLIA");
  expect(words("our reading", "USU-RANU")).toBe("our reading of USU-RANU");
  expect(words("common practice", null)).toBe("common practice");
  expect(words("own", null)).toBe("your own number");
});

test("no two marks say the same, with a source or without", () => {
  for (const source of [null, "USU-RANU"])
    expect(new Set(MARKS.map((mark) => originInWords({ mark, source }))).size).toBe(MARKS.length);
});
