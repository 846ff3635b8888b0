import { expect, test } from "vitest";
import { type Day, daysBetween, parseDay } from "#lib/domain/day";
import type { Treatment } from "#lib/domain/words";
import { firstCutOn } from "../first-cut-on";
import { planting, curve as row } from "../small-farm";
import { catalogueCurve } from "./catalogue-curve";

const firstCut = (crop: string, treatment: Treatment, plantedOn: Day): Day =>
  firstCutOn(row(catalogueCurve(crop, treatment)), planting({ id: 1, treatment, plantedOn, seasonYear: 2027 }));

/** Days that a tunnel comes before the field, both as in the catalogue. `setOutOn` matters only where a curve counts from planting. */
const daysAhead = (crop: string, setOutOn: Day): number =>
  daysBetween(firstCut(crop, "tunnel", setOutOn), firstCut(crop, "field", setOutOn));

const FIRST_OF_APRIL = parseDay("2027-04-01");

/** https://journals.ashs.org/search?f_0=author&q_0=Maegen+Lewis */
test("snapdragons in a tunnel come 5 to 8 weeks before those set out on 1 April (SNAP-LEWIS)", () => {
  const days = daysAhead("Snapdragon", FIRST_OF_APRIL);
  expect(days).toBeGreaterThanOrEqual(35);
  expect(days).toBeLessThanOrEqual(56);
});

/** https://discovery.researcher.life/topic/coral-charm/1974703?page=1 */
test("peonies in a tunnel come 21 to 34 days before the field (PEONY-USU)", () => {
  const days = daysAhead("Peony", FIRST_OF_APRIL);
  expect(days).toBeGreaterThanOrEqual(21);
  expect(days).toBeLessThanOrEqual(34);
});

/** "About 3 weeks": https://dokumen.tips/documents/the-2010-cut-flower-trials-cornell-a-wien-a-cutflowers-a-reports-a-2010.html */
test("tulips in a tunnel come about 3 weeks before the field (CORNELL-2010)", () => {
  expect(Math.abs(daysAhead("Tulip", FIRST_OF_APRIL) - 21)).toBeLessThanOrEqual(3);
});

/** Late April in the south to early July in the north of the central states: https://docslib.org/doc/268955/peony-questions-and-answers */
test("field peonies start within the published window of the central states (NCSU-PEONYQA)", () => {
  const start = firstCut("Peony", "field", FIRST_OF_APRIL);
  expect(start >= parseDay("2027-04-20") && start <= parseDay("2027-07-07")).toBe(true);
});
