/**
 * Cautions that the catalogue gives with a crop, in our own words. A crop without one is not thereby safe: no list of poisonous
 * plants is complete, and a plant that is not on such a list is not food.
 */

/** Listed as not to be eaten by CSU-EDIBLE or MDPC, or by HOME-POISON (ranunculus). */
export const POISONOUS = "Poisonous if eaten: keep off cakes and tables with food";

/** Listed by CSU-EDIBLE for its seeds. */
export const POISONOUS_SEEDS = "Seeds and pods are poisonous if eaten: keep off cakes and tables with food";

/** Sap that irritates: CUTIS-DAFF (narcissus), HOME-POISON (ranunculus). */
export const IRRITANT_SAP = "Sap can irritate skin: gloves";

/** Florists' skin allergy: HAZMAP (tulip). */
export const SKIN_ALLERGY = "Can cause skin allergy in hands that work with it often: gloves";

/** HAZMAP names chrysanthemum and the daisy family (Compositae) as a whole. */
export const DAISY_FAMILY = "Daisy family: can cause skin allergy in hands that work with it often: gloves";

/** HAZMAP: hives on contact (Lilium longiflorum). */
export const HIVES = "Can raise hives on contact: gloves";

/** HAZMAP: asthma in people who worked with it (bells of Ireland; statice, dried). */
export const ASTHMA = "Has caused asthma in people who work with it: air the room, wear a mask for large lots";

/** From memory; no source seen. */
export const SAP_IN_SUN = "Sap on skin can burn in sunlight: cover arms when cutting (from memory)";

/** Of one family with ranunculus (HOME-POISON names that one). From memory; no source seen for anemone itself. */
export const BUTTERCUP_FAMILY =
  "Buttercup family, as ranunculus: take its sap as irritant, gloves, and keep it off cakes and tables with food (from memory)";

/** From memory; no source seen. */
export const CATS = "Can kill a cat: leaf, flower, pollen and vase water. Not for homes with cats (from memory)";

/** Common practice. */
export const SHARED_WATER =
  "Its sap in shared water shortens the life of other stems: stand it alone for a day, then give fresh water and do not cut it again (common practice)";

/** Common practice. */
export const THORNS = "Thorns: gloves, wash a prick at once, strip what hands will hold (common practice)";
