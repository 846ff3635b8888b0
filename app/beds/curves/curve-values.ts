import { PERCENT } from "#lib/domain/measures";
import type { Parsed } from "#lib/domain/problem";
import { type BloomCurve, bloomCurveSchema } from "#lib/domain/records/curve";
import { OWN } from "#lib/domain/sourced";
import type { FormValues } from "../../ui/form-values";

/** A bloom curve before it has an id. */
export type CurveDraft = Omit<BloomCurve, "id">;

const curveDraftSchema = bloomCurveSchema.omit({ id: true });

/** What a curve starts from where there was none. */
const NONE_BEFORE = { timingOrigin: OWN, yieldOrigin: OWN, note: "" };

/**
 * A bloom curve as its form says. Where timing or yield differs from `before`, its origin becomes the farm's own; a note on the built-in
 * figures goes with the last of them.
 */
export function readCurve(values: FormValues, before: BloomCurve | undefined): Parsed<CurveDraft> {
  const anchor =
    values.text("anchor.kind") === "day-of-year"
      ? { kind: "day-of-year", firstCut: values.text("anchor.firstCut") }
      : { kind: "days-after-planting", days: values.number("anchor.days") };
  const parsed = values.parse(curveDraftSchema, {
    cropId: values.hiddenNumber("cropId"),
    varietyId: values.text("isFor") === "variety" ? values.hiddenNumber("varietyId") : null,
    treatment: values.text("treatment"),
    anchor,
    stemsPerPlantByWeek: values.numbers("stemsPerPlantByWeek"),
    firstCutSpreadDays: values.number("firstCutSpreadDays"),
    yieldSpread: values.number("yieldSpread", {
      measure: PERCENT,
      before: before?.yieldSpread,
      range: "a percentage from 0 to 200",
    }),
    ...(before
      ? { timingOrigin: before.timingOrigin, yieldOrigin: before.yieldOrigin, note: before.note }
      : NONE_BEFORE),
  });
  return parsed.ok && before ? { ok: true, parsed: marked(parsed.parsed, before) } : parsed;
}

function marked(curve: CurveDraft, before: BloomCurve): CurveDraft {
  const isSame = (part: (curve: CurveDraft) => unknown) => JSON.stringify(part(curve)) === JSON.stringify(part(before));
  const timingOrigin = isSame((c) => [c.anchor, c.firstCutSpreadDays]) ? before.timingOrigin : OWN;
  const yieldOrigin = isSame((c) => [c.stemsPerPlantByWeek, c.yieldSpread]) ? before.yieldOrigin : OWN;
  const isOwn = timingOrigin.mark === "own" && yieldOrigin.mark === "own";
  return { ...curve, timingOrigin, yieldOrigin, note: isOwn ? "" : curve.note };
}
