import type { BareCrop } from "#lib/domain/catalogue-types";
import { COMMON_PRACTICE } from "#lib/domain/sourced";
import { DAISY_FAMILY } from "./cautions";
import { afterPlanting, curve, onDay } from "./curve";
import { memory, ourReading, ourReadingOf, practice } from "./marked";

const REPLANTED_GROUNDS = {
  timingOrigin: ourReadingOf("ASCFG-2018VT"),
  yieldOrigin: ourReadingOf("ASCFG-2018DT"),
  note: "13 weeks from planting to first cut are published for Blacksburg, Virginia, zone 6b; that zone 7a is alike is our reading. Close to 10 stems per plant is the published mean of two kinds on many farms, some 30 (ASCFG-2018DT); the split over the weeks is from memory.",
};

const KEPT_GROUNDS = {
  timingOrigin: COMMON_PRACTICE,
  note: "Early June is common practice for zone 7. Late June is published for mulched beds in north-west Arkansas (ATTRA-DAHLIA). No published count of stems per plant was found for beds kept in the ground.",
};

/** How balls and pompons differ from large heads; no published comparison was found. */
const SMALL_HEADED =
  "Balls come into full bloom sooner than large heads, in beds that were kept a few days before them, and give about a tenth more stems: from memory, within what is published.";

/**
 * Dahlias. Hold: common practice is 1 to 3 days before the event, and 5 at most, at a stretch; 7 days at 1 C cost up to 2 days of vase life
 * (DOLE-DAHLIA), so 7 is a limit and not a plan. Tops die at the first frost; clumps may stay in the ground or be dug.
 */
export const DAHLIAS: readonly BareCrop[] = [
  {
    name: "Dahlia",
    scientific: "Dahlia × variabilis",
    shape: "mass",
    roles: ["focal"],
    usualRole: "focal",
    tender: true,
    overwinters: true,
    holdDays: practice(3),
    fieldDays: memory(2),
    bunchStems: practice(5),
    bucketStems: memory(25),
    // The top of 3 to 5 dollars a stem, grower to florist, for dinnerplate types in 2021; that others cost as much is our reading.
    buyInCents: ourReading(500, "ASCFG-2021"),
    cutStage: "Fully open, back petals still firm",
    cautions: [DAISY_FAMILY],
    curves: [
      curve("spring-planted", afterPlanting(91), [0.6, 1, 1.2, 1.3, 1.3, 1.3, 1.2, 1.1, 1], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.25,
        ...REPLANTED_GROUNDS,
      }),
      curve(
        "kept-in-ground",
        onDay("06-05"),
        [0.5, 0.9, 1.1, 1.1, 0.9, 0.7, 0.6, 0.6, 0.7, 0.8, 1, 1.2, 1.3, 1.3, 1.3, 1.2, 1.1, 1, 0.9, 0.7],
        { firstCutSpreadDays: 8, yieldSpread: 0.3, ...KEPT_GROUNDS },
      ),
    ],
  },
  {
    name: "Ball dahlia",
    scientific: "Dahlia × variabilis (ball and pompon types)",
    shape: "mass",
    roles: ["secondary", "focal"],
    usualRole: "secondary",
    tender: true,
    overwinters: true,
    holdDays: practice(3),
    fieldDays: memory(3),
    bunchStems: practice(10),
    bucketStems: memory(40),
    buyInCents: memory(250),
    cutStage: "Three-quarters to fully open, back petals still firm",
    cautions: [DAISY_FAMILY],
    curves: [
      curve("spring-planted", afterPlanting(91), [1, 1.3, 1.4, 1.4, 1.3, 1.2, 1.2, 1.1, 1], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.25,
        ...REPLANTED_GROUNDS,
        note: `${REPLANTED_GROUNDS.note} ${SMALL_HEADED}`,
      }),
      curve(
        "kept-in-ground",
        onDay("06-02"),
        [0.7, 1.1, 1.3, 1.3, 1.1, 0.9, 0.8, 0.8, 0.9, 1, 1.2, 1.4, 1.5, 1.5, 1.4, 1.3, 1.2, 1.1, 1, 0.8, 0.6],
        { firstCutSpreadDays: 8, yieldSpread: 0.3, ...KEPT_GROUNDS, note: `${KEPT_GROUNDS.note} ${SMALL_HEADED}` },
      ),
    ],
  },
];
