import { expect, test } from "vitest";
import { BED_FLAGS } from "#lib/domain/records/bed";
import { PLANTING_FLAGS } from "#lib/domain/records/planting";
import { FLAG_WORDS } from "#lib/plan/words/flag-words";

test("[K2] every flag says in its own words why the bed is dug", () => {
  const said = [...BED_FLAGS, ...PLANTING_FLAGS].map((flag) => FLAG_WORDS[flag]);
  expect(new Set(said).size).toBe(BED_FLAGS.length + PLANTING_FLAGS.length);
  expect(FLAG_WORDS["wet soil"]).toBe("the soil is wet: tubers rot in it over winter");
});
