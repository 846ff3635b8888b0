import { expect, test } from "vitest";
import { MADE, type Made, type Truth } from "#lib/plan/learning/how-true/truth";
import {
  cropTruthInWords,
  daysLateInSign,
  firstCutsInWords,
  howTrueLead,
  inAllLead,
  mostWithinInWords,
  offInWords,
  stemsCameInWords,
  stemsOffInSign,
  wintersBeforeInWords,
} from "#lib/plan/words/how-true-words";

const timing = (daysLate: number, mostDaysOff: number) => ({
  timing: { plantingCount: 17, daysLate, mostDaysOff, meanCameDay: 0 },
});
const stems = (cameStems: number, saidStems: number) => ({
  stems: { pickingCount: 25, cameStems, saidStems, offStems: 30 },
});
const NOTHING: Truth = { timing: null, stems: null };

const truthOf = (given: Partial<Record<Made, Partial<Truth>>>) => {
  const said = { winter: NOTHING, spring: NOTHING, "four weeks ahead": NOTHING };
  for (const made of MADE) said[made] = { ...NOTHING, ...given[made] };
  return { plantingCount: 18, said };
};

const DAHLIA = truthOf({
  winter: { ...timing(7.7, 12), ...stems(158, 195) },
  spring: { ...timing(7.1, 11), ...stems(158, 158) },
  "four weeks ahead": { ...timing(-0.6, 1), ...stems(158, 150) },
});
const crop = { id: 1, name: "Dahlia" };

test("how true a season was is told in days, then in stems, bed by bed and in all", () => {
  expect(howTrueLead({ all: DAHLIA })).toEqual([
    "Of 17 first cuts eight in ten came within 12 days of what winter said, 11 days of what spring said and 1 day of what was said four weeks ahead.",
    "Bed by bed, the stems of 25 recorded pickings were off by 15 % of what winter said, 19 % of what spring said and 20 % of what was said four weeks ahead.",
  ]);
  expect(inAllLead({ all: DAHLIA })).toBe(
    "In all 158 stems came: 19 % fewer than winter said, as many as spring said and 5 % more than was said four weeks ahead.",
  );
  const { timing: first, stems: came } = DAHLIA.said.winter;
  expect(first && mostWithinInWords(first)).toBe("8 in 10 within 12 days");
  expect(came && offInWords(came)).toBe("stems off by 15 %");
});

test("of a few first cuts all are told", () => {
  const few = (plantingCount: number) => {
    const { timing: all } = timing(2, 3);
    return { ...all, plantingCount };
  };
  const lead = (plantingCount: number) =>
    howTrueLead({ all: truthOf({ "four weeks ahead": { timing: few(plantingCount) } }) });
  expect(lead(1)).toEqual(["The one first cut that is known came within 3 days of what was said four weeks ahead."]);
  expect(lead(4)).toEqual(["All 4 first cuts that are known came within 3 days of what was said four weeks ahead."]);
  expect([4, 5].map((count) => mostWithinInWords(few(count)))).toEqual(["all within 3 days", "8 in 10 within 3 days"]);
});

test("what is not known is not told", () => {
  expect([howTrueLead({ all: truthOf({}) }), inAllLead({ all: truthOf({}) })]).toEqual([[], ""]);
  const noneSaid = truthOf({ "four weeks ahead": stems(12, 0) });
  expect([howTrueLead({ all: noneSaid }), inAllLead({ all: noneSaid })]).toEqual([[], "In all 12 stems came."]);
  expect(offInWords(stems(12, 0).stems)).toBe("");
  expect(cropTruthInWords({ crop, ...truthOf({ "four weeks ahead": timing(2, 3) }) })).toBe("");
  expect(firstCutsInWords(truthOf({}))).toBe("");
});

test("a crop is told against winter, and beside it how far off four weeks ahead was", () => {
  expect(cropTruthInWords({ crop, ...DAHLIA })).toBe(
    "Dahlia came 8 days later than winter said, with 19 % fewer stems; what was said four weeks ahead was out by 1 day.",
  );
  expect(cropTruthInWords({ crop, ...truthOf({ winter: { ...timing(-1, 1), ...stems(40, 40) } }) })).toBe(
    "Dahlia came 1 day earlier than winter said.",
  );
  expect(cropTruthInWords({ crop, ...truthOf({ winter: timing(0.2, 1) }) })).toBe(
    "Dahlia came on the day that winter said.",
  );
  const before = [9.2, -1.3, 0.2].map((daysLate, index) => ({ season: 2026 - index, daysLate }));
  expect(wintersBeforeInWords({ wintersBefore: before })).toBe(
    "Before: 9 days later in 2026, 1 day earlier in 2025, on the day in 2024.",
  );
  expect(wintersBeforeInWords({ wintersBefore: [] })).toBe("");
  expect(firstCutsInWords(DAHLIA)).toBe("17 of 18 first cuts");
  expect(stemsCameInWords(stems(158, 195).stems)).toEqual(["158 stems", "in 25 pickings"]);
});

test("in a table later and more have a plus, earlier and fewer a minus, and nothing neither", () => {
  expect([7.7, -0.6, 0.4, -0.4].map(daysLateInSign)).toEqual(["+8 days", "−1 day", "0 days", "0 days"]);
  const signs = [stems(158, 195), stems(41, 40), stems(9, 9)].map(({ stems: one }) => stemsOffInSign(one));
  expect(signs).toEqual(["−37 stems", "+1 stem", "0 stems"]);
});
