import type { BareCrop } from "#lib/domain/catalogue-types";
import { CATS, DAISY_FAMILY, HIVES, POISONOUS, THORNS } from "./cautions";
import { afterPlanting, curve, onDay } from "./curve";
import { GENERAL_HOLD_DAYS, memory, ourReadingOf, practice, published, publishedIn, secondHand } from "./marked";

/** Large faces of summer and autumn other than dahlias. */
export const SUMMER_FACES: readonly BareCrop[] = [
  {
    name: "Garden rose",
    scientific: "Rosa hybrids",
    shape: "mass",
    roles: ["focal", "secondary"],
    usualRole: "focal",
    tender: false,
    overwinters: false,
    // 4 to 14 days are published for florists' roses (WILLS-1998), none for garden roses.
    holdDays: GENERAL_HOLD_DAYS,
    fieldDays: memory(2),
    bunchStems: practice(10),
    bucketStems: memory(40),
    buyInCents: memory(450),
    cutStage: "Outer petals starting to lift",
    cautions: [THORNS],
    curves: [
      curve(
        "field",
        onDay("05-25"),
        // Four flushes, six weeks from crest to crest and seven to the last, when it is cooler.
        [1.2, 2.3, 2.1, 1.1, 0.5, 0.4, 0.9, 1.5, 1.3, 0.6, 0.3, 0.4, 0.9, 1.4, 1.2, 0.6, 0.2, 0.3, 0.5, 0.75, 0.85],
        {
          firstCutSpreadDays: 6,
          yieldSpread: 0.3,
          yieldOrigin: ourReadingOf("ROSE-MS"),
          note: "Plants of three years and more. 3 to 12 and 3 to 20 stems a plant and month are published for two groups of cut roses in Verona, Mississippi, zone 7b to 8a (ROSE-MS); 19 in a season, some four a month, is our reading, low among them. They bloom in flushes, six to eight weeks apart by common practice; 479 and 589 degree days from bud break to open flower are published for two miniature roses (ROSE-MINI), and that a flush follows the one before after so much warmth, some six weeks in zone 7a, is our reading.",
        },
      ),
    ],
  },
  {
    name: "Lily",
    scientific: "Lilium hybrids",
    shape: "form",
    roles: ["focal"],
    usualRole: "focal",
    tender: false,
    overwinters: false,
    holdDays: secondHand(4, "WILLS-1998"),
    fieldDays: memory(2),
    bunchStems: practice(10),
    bucketStems: memory(30),
    buyInCents: memory(250),
    cutStage: "First bud coloured and about to open",
    cautions: [HIVES, CATS],
    curves: [
      curve("field", onDay("06-08"), [0.2, 0.3, 0.2, 0.1, 0.1, 0.1], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.15,
        note: "June and July for Asiatic, July and August for Oriental kinds are published for Maine (UMAINE), which is colder. One stem per bulb.",
      }),
    ],
  },
  {
    name: "Sunflower",
    scientific: "Helianthus annuus",
    shape: "mass",
    roles: ["focal"],
    usualRole: "focal",
    tender: true,
    overwinters: false,
    holdDays: published(3, "SUNF-2023"),
    fieldDays: memory(2),
    bunchStems: practice(10),
    bucketStems: memory(40),
    buyInCents: memory(150),
    cutStage: "Petals unfolded and at least upright",
    cautions: [DAISY_FAMILY],
    curves: [
      curve("field", afterPlanting(58), [0.65, 0.35], {
        firstCutSpreadDays: 4,
        yieldSpread: 0.1,
        timingOrigin: ourReadingOf("SUN-2008W"),
        yieldOrigin: publishedIn("ASCFG-2010S"),
        note: "53 to 70 days from sowing are published for Ithaca, New York, by day length (SUN-2008W); 58 are our reading. Single-stem kinds: one flower per plant. Day length in the first three weeks moves some kinds by weeks (CORNELL-SUN).",
      }),
    ],
  },
  {
    name: "Hydrangea",
    scientific: "Hydrangea paniculata and H. arborescens",
    shape: "mass",
    roles: ["focal", "secondary"],
    usualRole: "focal",
    tender: false,
    overwinters: false,
    holdDays: GENERAL_HOLD_DAYS,
    fieldDays: memory(5),
    bunchStems: practice(5),
    bucketStems: memory(20),
    buyInCents: memory(500),
    // Heads cut greened outlasted fresh-coloured ones by about 60 days in one cultivar (HYD-STAGE).
    cutStage: "Fully coloured and firm; greened and papery lasts longest",
    cautions: [POISONOUS],
    curves: [
      curve("field", onDay("06-15"), [0.5, 1, 1.4, 1.5, 1.4, 1.2, 1, 0.9, 0.8, 0.8, 0.7, 0.8, 0.6, 0.4], {
        firstCutSpreadDays: 8,
        yieldSpread: 0.3,
        note: "Shrubs of full age.",
      }),
    ],
  },
  {
    name: "Chrysanthemum",
    scientific: "Chrysanthemum × morifolium",
    shape: "mass",
    roles: ["secondary", "focal"],
    usualRole: "secondary",
    tender: false,
    overwinters: false,
    holdDays: secondHand(7, "WILLS-1998"),
    fieldDays: memory(5),
    bunchStems: practice(10),
    bucketStems: memory(50),
    buyInCents: memory(200),
    cutStage: "Outer petals open, centre still tight",
    cautions: [POISONOUS, DAISY_FAMILY],
    curves: [
      curve("field", onDay("09-18"), [0.6, 1, 1.2, 1.2, 1, 0.7, 0.3], { firstCutSpreadDays: 7, yieldSpread: 0.25 }),
      curve("tunnel", onDay("10-01"), [0.5, 0.9, 1.1, 1.1, 0.9, 0.7, 0.5], {
        firstCutSpreadDays: 7,
        yieldSpread: 0.2,
        note: "Late large-headed kinds, kept dry and free of frost.",
      }),
    ],
  },
];
