import fc from "fast-check";
import { MOVE_KINDS } from "#lib/domain/records/cooler-move";
import { day } from "./arbitraries";

/** A move out of the cooler whose ids are places in a list, to be looked up with `among`. */
export const moveDraft = fc.record({
  movedOn: day,
  cutOn: day,
  varietyId: fc.nat(),
  bookingId: fc.option(fc.nat()),
  kind: fc.constantFrom(...MOVE_KINDS),
  stemCount: fc.integer({ min: 1, max: 1_000_000 }),
});
