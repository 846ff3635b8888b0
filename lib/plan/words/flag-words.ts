import type { BedFlag } from "#lib/domain/records/bed";
import type { PlantingFlag } from "#lib/domain/records/planting";

/** Why a flag forbids keeping. The reasons are common practice. */
export const FLAG_WORDS: Record<BedFlag | PlantingFlag, string> = {
  "wet soil": "the soil is wet: tubers rot in it over winter",
  "vole damage": "voles ate here: under leaves and a tarp they would eat again",
  "wanted for something else": "the bed is wanted for something else in spring",
  "virus or gall": "virus or gall: lift, look at every clump, and throw out the sick ones",
  "old crowded clumps": "the clumps are old and crowded: lift and divide them",
  "too precious to risk": "too precious to risk in the ground",
};
