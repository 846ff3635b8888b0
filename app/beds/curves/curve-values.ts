import type { Parsed } from "#lib/domain/problem";
import {
  ANCHOR,
  type Anchor,
  type BloomCurve,
  CURVE,
  type CurveDraft,
  curveDraftSchema,
  curveWeeksSchema,
} from "#lib/domain/records/curve";
import type { Manner } from "#lib/domain/records/form";
import { unlearned } from "#lib/domain/records/learned";
import { OWN } from "#lib/domain/sourced";
import type { FormValues } from "../../ui/form-values";

/** What a curve starts from where there was none. */
const NONE_BEFORE = { timingOrigin: OWN, yieldOrigin: OWN, heatOrigin: OWN, note: "" };

/**
 * A bloom curve as its form says. Where timing or yield differs from `before`, its origin becomes the farm's own; a note on the built-in
 * figures goes with the last of them.
 */
export function readCurve(values: FormValues, manner: Manner, before: BloomCurve | undefined): Parsed<CurveDraft> {
  const { firstCutSpreadDays, yieldSpread, shareByAge, lateLossShare, saleableBySeason } = CURVE;
  const { heatBaseC, heatCeilingC, heatLimitC, heatFrom, heatPlace, ends, endHighC, sowingDays, laterDays } = CURVE;
  const spreads = values.record(
    { firstCutSpreadDays, yieldSpread, shareByAge, lateLossShare, saleableBySeason },
    manner,
    { before },
  );
  const course = values.record(
    { heatBaseC, heatCeilingC, heatLimitC, heatFrom, heatPlace, ends, endHighC, sowingDays, laterDays },
    manner,
    { before },
  );
  const anchor = readAnchor(values, manner);
  const isFor = values.text("isFor");
  const stemsPerPlantByWeek = values.numbers("stemsPerPlantByWeek");
  values.parse(curveWeeksSchema, { stemsPerPlantByWeek });
  if (!spreads.ok || !course.ok || !anchor) return values.refusal();
  const parsed = values.parse(curveDraftSchema, {
    cropId: values.hiddenNumber("cropId"),
    varietyId: isFor === "crop" ? null : values.hiddenNumber("varietyId"),
    plantingId: isFor === "planting" ? values.hiddenNumber("plantingId") : null,
    treatment: values.text("treatment"),
    anchor,
    stemsPerPlantByWeek,
    ...spreads.parsed,
    ...course.parsed,
    learned: before?.learned ?? [],
    ...(before ? originsOf(before) : NONE_BEFORE),
  });
  return parsed.ok && before ? { ok: true, parsed: marked(parsed.parsed, before) } : parsed;
}

const originsOf = ({ timingOrigin, yieldOrigin, heatOrigin, note }: BloomCurve) => ({
  timingOrigin,
  yieldOrigin,
  heatOrigin,
  note,
});

/** The first cut in the way that was chosen; what stands in the other field is not read. Null when it is refused. */
function readAnchor(values: FormValues, manner: Manner): Anchor | null {
  const { firstCut, daysAfterPlanting } = ANCHOR;
  if (values.text("anchor.kind") === "day-of-year") {
    const read = values.record({ firstCut }, manner);
    return read.ok ? { kind: "day-of-year", firstCut: read.parsed.firstCut } : null;
  }
  const read = values.record({ daysAfterPlanting }, manner);
  return read.ok ? { kind: "days-after-planting", days: read.parsed.daysAfterPlanting } : null;
}

function marked(curve: CurveDraft, before: BloomCurve): CurveDraft {
  const isSame = (part: (curve: CurveDraft) => unknown) => JSON.stringify(part(curve)) === JSON.stringify(part(before));
  const timingOrigin = isSame((c) => [
    c.anchor,
    c.firstCutSpreadDays,
    c.heatFrom,
    c.heatPlace,
    c.ends,
    c.endHighC,
    c.sowingDays,
    c.laterDays,
  ])
    ? before.timingOrigin
    : OWN;
  const yieldOrigin = isSame((c) => [
    c.stemsPerPlantByWeek,
    c.yieldSpread,
    c.shareByAge,
    c.lateLossShare,
    c.saleableBySeason,
  ])
    ? before.yieldOrigin
    : OWN;
  const heatOrigin = isSame((c) => [c.heatBaseC, c.heatCeilingC, c.heatLimitC]) ? before.heatOrigin : OWN;
  const isOwn = timingOrigin.mark === "own" && yieldOrigin.mark === "own";
  // What is typed is meant: what was learned of it before is not to be moved on top.
  const timed = isSame((c) => [c.anchor, c.heatBaseC, c.heatFrom, c.heatPlace, c.sowingDays, c.laterDays])
    ? curve.learned
    : unlearned(curve.learned, "laterDays");
  const learned = isSame((c) => c.stemsPerPlantByWeek) ? timed : unlearned(timed, "yieldFactor");
  return { ...curve, learned, timingOrigin, yieldOrigin, heatOrigin, note: isOwn ? "" : curve.note };
}
