import fc from "fast-check";
import { BUD_SIGNS } from "#lib/domain/records/bud-look";
import { LOSS_CAUSES } from "#lib/domain/records/loss";
import { day } from "./arbitraries";

/** A look at buds whose ids are places in a list, to be looked up with `among`. */
export const budLookDraft = fc.record({
  lookedOn: day,
  bedId: fc.nat(),
  varietyId: fc.nat(),
  sign: fc.constantFrom(...BUD_SIGNS),
  daysToCut: fc.option(fc.integer({ min: 0, max: 365 })),
});

/** What was left of plants; ids are places in a list, to be looked up with `among`. */
export const lossDraft = fc
  .record({
    seenOn: day,
    bedId: fc.nat(),
    varietyId: fc.nat(),
    cause: fc.constantFrom(...LOSS_CAUSES),
    plantsBefore: fc.integer({ min: 1, max: 1_000_000 }),
    plantsLeft: fc.nat(1_000_000),
  })
  .map((loss) => ({ ...loss, plantsLeft: Math.min(loss.plantsLeft, loss.plantsBefore) }));
