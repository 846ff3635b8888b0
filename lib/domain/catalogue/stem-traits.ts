import type { CatalogueCrop, TraitlessCrop } from "#lib/domain/catalogue-types";
import { FROM_MEMORY } from "#lib/domain/sourced";
import type { HeadSize, OutOfWater, StemLength } from "#lib/domain/words";

type Traits = readonly [head: HeadSize | null, stem: StemLength | null, outOfWater: OutOfWater | null];

/**
 * What the stems of each crop are like, all from memory: no published table was found. Null where it is not told: spikes, umbels and leaves have no one head,
 * and of some we do not know. Short is cut at less than about 40 cm (16 in). Out of water means through a wedding day, hydrated before; where the trade is of two
 * minds the crop is said to wilt. Varieties differ, and what the grower writes overrules it.
 */
const TRAITS: Readonly<Record<string, Traits>> = {
  Amaranth: [null, "long", "holds"],
  Ammi: [null, "long", "wilts"],
  Anemone: ["medium", "short", "wilts"],
  "Ball dahlia": ["medium", "long", "holds"],
  "Bells of Ireland": [null, "long", "holds"],
  Celosia: ["medium", "long", "holds"],
  "China aster": ["medium", "long", "holds"],
  Chrysanthemum: ["medium", "long", "holds"],
  Cosmos: ["medium", "long", "wilts"],
  "Crested celosia": ["large", "long", "holds"],
  Dahlia: ["large", "long", "wilts"],
  Delphinium: [null, "long", "wilts"],
  Eucalyptus: [null, "long", "holds"],
  Feverfew: ["small", "long", "holds"],
  Foxglove: [null, "long", "wilts"],
  "Garden rose": ["large", "long", "holds"],
  Gladiolus: [null, "long", "wilts"],
  Gomphrena: ["small", "long", "holds"],
  Hydrangea: ["large", "long", "wilts"],
  Larkspur: [null, "long", null],
  Lily: ["large", "long", "holds"],
  Lisianthus: ["medium", "long", "holds"],
  Marigold: ["medium", "long", "holds"],
  Mint: [null, "short", "wilts"],
  Narcissus: ["medium", "short", "wilts"],
  Nigella: ["medium", "short", null],
  Ninebark: [null, "long", "holds"],
  Peony: ["large", "long", "wilts"],
  Ranunculus: ["medium", "short", "holds"],
  "Raspberry leaf": [null, "long", null],
  Scabiosa: ["medium", "long", null],
  Snapdragon: [null, "long", "wilts"],
  Statice: ["small", "long", "holds"],
  Stock: [null, "long", "wilts"],
  Strawflower: ["medium", "long", "holds"],
  Sunflower: ["large", "long", "wilts"],
  "Sweet pea": ["small", "short", "wilts"],
  Tulip: ["medium", "short", "wilts"],
  Yarrow: [null, "long", "holds"],
  Zinnia: ["medium", "long", "wilts"],
};

/** The crop with what its stems are like. */
export function withTraits(crop: TraitlessCrop): CatalogueCrop {
  const [headSize, stemLength, outOfWater] = TRAITS[crop.name] ?? [null, null, null];
  return { ...crop, headSize, stemLength, outOfWater, traitsOrigin: FROM_MEMORY };
}
