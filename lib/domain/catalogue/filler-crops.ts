import type { BareCrop } from "#lib/domain/catalogue-types";
import { ASTHMA, DAISY_FAMILY, POISONOUS, SAP_IN_SUN } from "./cautions";
import { afterPlanting, curve, onDay } from "./curve";
import { GENERAL_HOLD_DAYS, memory, ourReadingOf, practice, secondHand } from "./marked";

/** Soft volume. */
export const FILLER_CROPS: readonly BareCrop[] = [
  {
    name: "Statice",
    scientific: "Limonium sinuatum",
    shape: "filler",
    roles: ["filler"],
    usualRole: "filler",
    tender: true,
    overwinters: false,
    holdDays: secondHand(14, "WILLS-1998"),
    fieldDays: memory(7),
    bunchStems: practice(10),
    bucketStems: memory(80),
    buyInCents: memory(90),
    cutStage: "Most florets coloured and papery",
    cautions: [ASTHMA],
    curves: [
      curve("field", afterPlanting(85), [0.5, 0.9, 1.1, 1.1, 1, 0.8, 0.7, 0.6, 0.5, 0.4, 0.4], {
        firstCutSpreadDays: 6,
        yieldSpread: 0.3,
      }),
    ],
  },
  {
    name: "Feverfew",
    scientific: "Tanacetum parthenium",
    shape: "filler",
    roles: ["filler"],
    usualRole: "filler",
    tender: false,
    overwinters: false,
    holdDays: memory(3),
    fieldDays: memory(4),
    bunchStems: practice(10),
    bucketStems: memory(60),
    buyInCents: memory(110),
    cutStage: "Most buttons open and flat",
    cautions: [DAISY_FAMILY],
    curves: [
      curve("autumn-planted", onDay("06-01"), [1.2, 2, 1.8, 1.2, 0.8], { firstCutSpreadDays: 6, yieldSpread: 0.3 }),
      curve("field", afterPlanting(85), [0.9, 1.5, 1.3, 0.8, 0.5], { firstCutSpreadDays: 6, yieldSpread: 0.3 }),
    ],
  },
  {
    name: "Ammi",
    scientific: "Ammi majus and A. visnaga",
    shape: "filler",
    roles: ["filler"],
    usualRole: "filler",
    tender: false,
    overwinters: false,
    holdDays: GENERAL_HOLD_DAYS,
    fieldDays: memory(3),
    bunchStems: practice(10),
    bucketStems: memory(60),
    buyInCents: memory(110),
    cutStage: "Most of the head open and white, no pollen falling",
    cautions: [SAP_IN_SUN],
    curves: [
      curve("autumn-planted", onDay("05-28"), [0.9, 1.4, 1.5, 1.1, 0.7, 0.4], {
        firstCutSpreadDays: 6,
        yieldSpread: 0.3,
      }),
      curve("field", afterPlanting(75), [0.7, 1.1, 1, 0.7, 0.5], { firstCutSpreadDays: 6, yieldSpread: 0.3 }),
    ],
  },
  {
    name: "Yarrow",
    scientific: "Achillea millefolium and A. filipendulina",
    shape: "filler",
    roles: ["filler"],
    usualRole: "filler",
    tender: false,
    overwinters: false,
    holdDays: secondHand(7, "ASHS-SIX"),
    fieldDays: memory(4),
    bunchStems: practice(10),
    bucketStems: memory(60),
    buyInCents: memory(90),
    cutStage: "Head fully open and firm, pollen showing",
    cautions: [POISONOUS, DAISY_FAMILY],
    curves: [
      curve("field", onDay("06-01"), [1, 1.8, 2, 1.6, 1, 0.6, 0.5, 0.5], {
        firstCutSpreadDays: 6,
        yieldSpread: 0.3,
        yieldOrigin: ourReadingOf("ASCFG-P2019"),
        note: "June and July are published for Maine (UMAINE), which is colder. 8 stems a plant are published for one kind in its first year on many farms (ASCFG-P2019); 9 of a grown plant are our reading, which is cautious.",
      }),
    ],
  },
];
