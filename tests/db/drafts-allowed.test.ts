import fc from "fast-check";
import { expect, test } from "vitest";
import { bedSchema } from "#lib/domain/records/bed";
import { bookingDraftSchema } from "#lib/domain/records/booking";
import { budLookDraftSchema } from "#lib/domain/records/bud-look";
import { coolerStockSchema } from "#lib/domain/records/cooler-lot";
import { coolerMoveDraftSchema } from "#lib/domain/records/cooler-move";
import { cropSchema } from "#lib/domain/records/crop";
import { bloomCurveSchema } from "#lib/domain/records/curve";
import { cutDraftSchema } from "#lib/domain/records/cut";
import { farmSchema } from "#lib/domain/records/farm-settings";
import { firstCutDraftSchema } from "#lib/domain/records/first-cut";
import { lossDraftSchema } from "#lib/domain/records/loss";
import { plantingSchema } from "#lib/domain/records/planting";
import { purchaseDraftSchema } from "#lib/domain/records/purchase";
import { recipeSchema } from "#lib/domain/records/recipe";
import { reviewDraftSchema } from "#lib/domain/records/review";
import { anyReview } from "../any-review";
import { anyFirstCut } from "./any-first-cut";
import { budLookDraft, lossDraft } from "./any-look";
import {
  bedDraft,
  bookingDraft,
  cropDraft,
  curveDraft,
  cutDraft,
  farmSettings,
  plantingDraft,
  recipeDraft,
  stockDraft,
} from "./arbitraries";
import { moveDraft, purchaseDraft } from "./store-arbitraries";

const SEED = 20_270_918;

test("what the properties of records draw is what the domain allows", () => {
  const isAllowed = <T>(schema: { parse(input: unknown): T }, drafts: fc.Arbitrary<object>, rest: object = {}) =>
    fc.assert(
      fc.property(drafts, (draft) => {
        const row = { ...draft, ...rest };
        expect(schema.parse(row)).toEqual(row);
      }),
      { seed: SEED, numRuns: 100 },
    );
  isAllowed(farmSchema, farmSettings);
  isAllowed(cropSchema, cropDraft, { id: 1 });
  isAllowed(bloomCurveSchema, curveDraft, { id: 1, cropId: 1, varietyId: null, plantingId: null });
  isAllowed(recipeSchema, recipeDraft, { id: 1 });
  isAllowed(bedSchema, bedDraft, { id: 1 });
  isAllowed(plantingSchema, plantingDraft, { id: 1, bedId: 1, varietyId: 1 });
  isAllowed(cutDraftSchema, cutDraft);
  isAllowed(budLookDraftSchema, budLookDraft);
  isAllowed(lossDraftSchema, lossDraft);
  isAllowed(firstCutDraftSchema, anyFirstCut, { cropId: 1, varietyId: null });
  isAllowed(reviewDraftSchema, anyReview);
  isAllowed(coolerMoveDraftSchema, moveDraft);
  isAllowed(purchaseDraftSchema, purchaseDraft);
  isAllowed(coolerStockSchema, stockDraft, { id: 1, varietyId: 1 });
  isAllowed(bookingDraftSchema, bookingDraft);
});
