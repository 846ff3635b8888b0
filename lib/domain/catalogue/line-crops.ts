import type { BareCrop } from "#lib/domain/catalogue-types";
import { COMMON_PRACTICE } from "#lib/domain/sourced";
import { ASTHMA, POISONOUS } from "./cautions";
import { afterPlanting, curve, onDay } from "./curve";
import { GENERAL_HOLD_DAYS, memory, ourReadingOf, practice } from "./marked";

/** Spikes: height and movement. */
export const LINE_CROPS: readonly BareCrop[] = [
  {
    name: "Snapdragon",
    scientific: "Antirrhinum majus",
    shape: "line",
    roles: ["line"],
    usualRole: "line",
    tender: false,
    overwinters: false,
    // 14 days without loss is published for dry storage at 3 C (AHMAD-CEL); most farms hold in water, so we plan half of it.
    holdDays: memory(7),
    fieldDays: memory(4),
    bunchStems: practice(10),
    bucketStems: memory(80),
    buyInCents: memory(150),
    cutStage: "Lowest florets open, upper half in bud",
    cautions: [],
    curves: [
      curve("field", afterPlanting(68), [0.8, 1.2, 1.2, 0.8, 0.5, 0.3, 0.2, 0.2, 0.2, 0.3, 0.4, 0.4, 0.3, 0.2], {
        firstCutSpreadDays: 6,
        yieldSpread: 0.25,
        yieldOrigin: ourReadingOf("ASCFG-2013S"),
        note: "Set out about 1 April it starts in early June, and is weak in high summer. About 7 stems per plant in all, the published mean of three kinds in many places, taken for zone 7a, is our reading; a third to two thirds were marketable in Utah fields (SNAP-LEWIS).",
      }),
      curve("autumn-planted", onDay("05-12"), [0.7, 1.2, 1.4, 1.2, 0.9, 0.7, 0.5, 0.4], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.3,
        note: "Set out in autumn and covered over winter.",
      }),
      curve("tunnel", onDay("04-27"), [0.6, 1, 1.1, 1, 0.7, 0.5, 0.3, 0.3], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.2,
        timingOrigin: ourReadingOf("SNAP-LEWIS"),
        yieldOrigin: ourReadingOf("SNAP-LEWIS"),
        note: "5 to 8 weeks before the field is published; the field's own day is from memory. Published stems per square metre, divided at 9 inches between plants (common practice).",
      }),
    ],
  },
  {
    name: "Stock",
    scientific: "Matthiola incana",
    shape: "line",
    roles: ["line"],
    usualRole: "line",
    tender: false,
    overwinters: false,
    // Up to 14 days dry at 2 C is published (STOCK-VB); 3 to 6 days is what is commonly planned.
    holdDays: practice(6),
    fieldDays: memory(3),
    bunchStems: practice(10),
    bucketStems: memory(60),
    buyInCents: memory(180),
    cutStage: "Six or more florets open",
    cautions: [],
    curves: [
      curve("field", afterPlanting(60), [0.5, 0.35, 0.15], {
        firstCutSpreadDays: 5,
        yieldSpread: 0.15,
        yieldOrigin: COMMON_PRACTICE,
        note: "Single-stem kinds: one stem per plant, cut once.",
      }),
      curve("tunnel", afterPlanting(64), [0.4, 0.35, 0.25], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.15,
        yieldOrigin: COMMON_PRACTICE,
        note: "Single-stem kinds, set out in late winter.",
      }),
    ],
  },
  {
    name: "Bells of Ireland",
    scientific: "Moluccella laevis",
    shape: "line",
    roles: ["line"],
    usualRole: "line",
    tender: false,
    overwinters: false,
    holdDays: GENERAL_HOLD_DAYS,
    fieldDays: memory(5),
    bunchStems: practice(10),
    bucketStems: memory(40),
    buyInCents: memory(180),
    cutStage: "Most bells green and firm",
    cautions: [ASTHMA],
    curves: [
      curve("field", afterPlanting(75), [0.9, 1.3, 1, 0.5, 0.3], {
        firstCutSpreadDays: 6,
        yieldSpread: 0.35,
        note: "A tunnel gave three quarters more stems in the Midwest (LATE-TUNNEL).",
      }),
    ],
  },
  {
    name: "Gladiolus",
    scientific: "Gladiolus hybrids",
    shape: "line",
    roles: ["line"],
    usualRole: "line",
    tender: true,
    overwinters: false,
    holdDays: memory(5),
    fieldDays: memory(2),
    bunchStems: practice(10),
    bucketStems: memory(50),
    buyInCents: memory(150),
    cutStage: "One to five florets showing colour",
    cautions: [POISONOUS],
    curves: [
      curve("field", afterPlanting(80), [0.5, 0.4, 0.1], {
        firstCutSpreadDays: 5,
        yieldSpread: 0.15,
        note: "One spike per corm, planted in successions.",
      }),
    ],
  },
];
