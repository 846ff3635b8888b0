import { expect, test } from "vitest";
import {
  curveNamed,
  learnedInWords,
  proposalInWords,
  proposalsLead,
  seasonsInWords,
} from "#lib/plan/words/learned-words";
import { crop, curve } from "../../small-farm";

const NONE = { laterDays: 0, yieldFactor: 1 };

test("what a curve has learned last is told with the season from which it counts, nothing where it has learned nothing", () => {
  const learned = [
    { fromSeason: 2028, laterDays: 4, yieldFactor: 0.95 },
    { fromSeason: 2027, laterDays: 1, yieldFactor: 1 },
  ];
  expect(learnedInWords({ learned })).toBe(
    "From 2028 on 4 days later and 95 % of its stems, as recorded seasons taught.",
  );
  expect(learnedInWords({ learned: [] })).toBe("");
});

test("a proposal says what would be and what is, and each season what it saw of it", () => {
  const is = { fromSeason: 2028, laterDays: 4, yieldFactor: 0.9 };
  expect(proposalInWords({ part: "timing", was: NONE, is })).toBe("first cut 4 days later, now on its day");
  expect(proposalInWords({ part: "yield", was: NONE, is })).toBe("90 % of its stems, now all its stems");
  const season = { season: 2026, daysLate: -1.2, timingSeen: 0.5, yieldFactor: 0.8, yieldSeen: 0.9 };
  expect(seasonsInWords("timing", [season, { ...season, season: 2027, timingSeen: 1 }])).toBe(
    "2026: 1 day earlier (50 % of it seen); 2027: 1 day earlier",
  );
  expect(seasonsInWords("yield", [season])).toBe("2026: 80 % of its stems");
  expect(curveNamed({ crop: crop({ id: 1, name: "Dahlia" }), varietyName: null, curve: curve() })).toBe(
    "Dahlia, in the field",
  );
});

test("the page says how many changes there are and what they rest on", () => {
  expect(proposalsLead(0, [])).toMatch(/^No season with recorded cuts or bud walks is over yet\./);
  expect(proposalsLead(0, [2026])).toBe("The curves stand as the recorded season 2026 taught.");
  expect(proposalsLead(3, [2025, 2026])).toMatch(/^What the recorded seasons 2025 and 2026 taught: 3 changes/);
});
