import fc from "fast-check";
import { addDays } from "#lib/domain/day";
import type { StandingOrderDraft } from "#lib/domain/records/standing-order";
import { COLOURS, ROLES } from "#lib/domain/words";
import { between } from "./any-booking";
import { anyDay } from "./any-cuts";

/** What an order names, and its buyer. */
type Given = {
  readonly cropId: fc.Arbitrary<number>;
  readonly recipeId: fc.Arbitrary<number>;
  readonly buyer: fc.Arbitrary<string>;
};

/** A standing order of every kind that the types allow, which names these: of stems, or of pieces. */
export const anyOrder = ({ cropId, recipeId, buyer }: Given): fc.Arbitrary<StandingOrderDraft> =>
  fc
    .record({
      order: fc.record({
        buyer,
        kind: fc.constantFrom("subscription" as const, "market" as const, "florist" as const),
        weekday: fc.integer({ min: 1, max: 7 }),
        firstOn: anyDay,
        cropId: fc.option(cropId),
        colours: fc.array(fc.constantFrom(...COLOURS), { maxLength: 4 }),
        askedCount: between(0.01, 10_000),
        stemCents: fc.nat(100_000),
      }),
      dayCount: fc.nat(400),
      of: fc.oneof(
        fc.record({ role: fc.constantFrom(...ROLES), recipeId: fc.constant(null) }),
        fc.record({ role: fc.constant(null), recipeId }),
      ),
    })
    .map(({ order, dayCount, of }) => ({ ...order, ...of, lastOn: addDays(order.firstOn, dayCount) }));
