import type { BareCrop } from "#lib/domain/catalogue-types";
import { POISONOUS } from "./cautions";
import { afterPlanting, curve, onDay } from "./curve";
import { GENERAL_HOLD_DAYS, memory, ourReadingOf, practice } from "./marked";

/** Tall spires of early summer, all of them poisonous if eaten. */
export const TALL_SPIRES: readonly BareCrop[] = [
  {
    name: "Delphinium",
    scientific: "Delphinium elatum and hybrids",
    shape: "line",
    roles: ["line"],
    usualRole: "line",
    tender: false,
    overwinters: false,
    // One to two days are published, read second-hand (WILLS-1998); two to four are common practice before an event.
    holdDays: practice(2),
    fieldDays: memory(3),
    bunchStems: practice(10),
    bucketStems: memory(40),
    buyInCents: memory(250),
    cutStage: "A third of the florets open",
    cautions: [POISONOUS],
    curves: [
      curve("field", onDay("06-05"), [0.7, 0.9, 0.6, 0.2, 0.1, 0.1, 0.2, 0.4, 0.5, 0.3], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.35,
        note: "July and August are published for Maine (UMAINE), which is colder. A second, smaller flush after cutting back.",
      }),
      curve("tunnel", onDay("05-22"), [0.8, 1.2, 1.1, 0.8, 0.5, 0.4, 0.4, 0.4, 0.4], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.3,
        timingOrigin: ourReadingOf("USU-DELTH"),
        yieldOrigin: ourReadingOf("USU-DELTH"),
        note: "Second year: late May is published for northern Utah, zone 5, and the day is our reading. Up to 70 stems per square metre are published, about 6.5 a plant at 12 inches between plants (common practice); 6 is our reading.",
      }),
    ],
  },
  {
    name: "Larkspur",
    scientific: "Consolida ajacis",
    shape: "line",
    roles: ["line"],
    usualRole: "line",
    tender: false,
    overwinters: false,
    holdDays: GENERAL_HOLD_DAYS,
    fieldDays: memory(3),
    bunchStems: practice(10),
    bucketStems: memory(70),
    buyInCents: memory(120),
    cutStage: "A third of the florets open",
    cautions: [POISONOUS],
    curves: [
      curve("autumn-planted", onDay("05-24"), [1, 1.5, 1.3, 0.8, 0.4], {
        firstCutSpreadDays: 6,
        yieldSpread: 0.3,
        note: "Late March and April are published for Louisiana (LSU), which is warmer.",
      }),
      curve("field", afterPlanting(90), [0.8, 1.2, 0.9, 0.5], {
        firstCutSpreadDays: 6,
        yieldSpread: 0.3,
        note: "Sown in place in early spring.",
      }),
    ],
  },
  {
    name: "Foxglove",
    scientific: "Digitalis purpurea",
    shape: "line",
    roles: ["line"],
    usualRole: "line",
    tender: false,
    overwinters: false,
    holdDays: memory(2),
    fieldDays: memory(3),
    bunchStems: practice(10),
    bucketStems: memory(40),
    buyInCents: memory(200),
    cutStage: "Lowest third of the bells open",
    cautions: [POISONOUS],
    curves: [
      curve("autumn-planted", onDay("05-16"), [0.8, 1.1, 0.7, 0.4], {
        firstCutSpreadDays: 6,
        yieldSpread: 0.3,
        note: "June and July are published for Maine (UMAINE), which is colder.",
      }),
      curve("field", afterPlanting(95), [0.6, 0.8, 0.4, 0.2], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.35,
        note: "Kinds that bloom in their first year.",
      }),
    ],
  },
];
