import { expect, test } from "vitest";
import { seenName } from "#lib/domain/people";

test("names that look the same are the same: whatever the case, the blanks, how an é is composed, and what cannot be seen", () => {
  for (const same of ["wren  é", " WREN é ", "Wren e\u0301", "W\u200bren\u00a0é", "Wren\u202e é"])
    expect(seenName(same)).toBe("wren é");
  expect(seenName("Wren")).not.toBe(seenName("Wrens"));
});

test("a name of which nothing can be seen is none", () => {
  for (const none of ["", "  ", "\u200b\u200d", "\u202e \u0007"]) expect(seenName(none)).toBe("");
});
