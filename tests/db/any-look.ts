import fc from "fast-check";
import { BUD_SIGNS } from "#lib/domain/records/bud-look";
import { day } from "./arbitraries";

/** A look at buds whose ids are places in a list, to be looked up with `among`. */
export const budLookDraft = fc.record({
  lookedOn: day,
  bedId: fc.nat(),
  varietyId: fc.nat(),
  sign: fc.constantFrom(...BUD_SIGNS),
  daysToCut: fc.option(fc.integer({ min: 0, max: 365 })),
});
