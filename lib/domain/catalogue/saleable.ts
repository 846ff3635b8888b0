import type { CatalogueCrop, CatalogueCurve } from "#lib/domain/catalogue-types";

/** Of the stems cut in spring, summer, autumn and winter, the shares that are fit to sell, and what is known of them. */
type Saleable = {
  readonly saleableBySeason: readonly [spring: number, summer: number, autumn: number, winter: number];
  readonly note: string;
};

const saleable = (note: string, ...saleableBySeason: Saleable["saleableBySeason"]): Saleable => ({
  saleableBySeason,
  note,
});

const MEMORY = "from memory";

/** What nothing more is known of: one stem in ten is short, crooked, marked or broken. */
const NINE_IN_TEN = saleable(`nine in ten, ${MEMORY}.`, 0.9, 0.9, 0.9, 0.9);
const OF_FOLIAGE = saleable(`nineteen in twenty, ${MEMORY}.`, 0.95, 0.95, 0.95, 0.95);
const OF_DAHLIA = saleable(
  `fewer in the heat and rain of summer, shares ${MEMORY}. Flowers are fewer and smaller where it is warmer (BRONDUM).`,
  ...([0.85, 0.8, 0.88, 0.85] as const),
);
const OF_SNAPDRAGON = saleable(
  "34 to 58 % of field stems are published as marketable for northern Utah (SNAP-LEWIS); the middle of that in summer and its upper end in cooler seasons are our reading.",
  ...([0.58, 0.46, 0.58, 0.58] as const),
);

/**
 * Shares of a crop's stems that are fit to sell, of all its treatments but those of `IN_TUNNELS`. Every built-in yield counts all stems cut. Where marketable stems are
 * published, as of lisianthus and ranunculus, those graded out were added to make up all.
 */
const SALEABLE: Readonly<Record<string, Saleable>> = {
  Anemone: saleable(
    "about a fifth is published as too short to sell in tunnels of Israel (ANEM-2023); that it is so here is our reading.",
    ...([0.8, 0.8, 0.8, 0.8] as const),
  ),
  "Ball dahlia": OF_DAHLIA,
  Cosmos: saleable(`rain shatters it, shares ${MEMORY}.`, 0.85, 0.85, 0.85, 0.85),
  Dahlia: OF_DAHLIA,
  Eucalyptus: OF_FOLIAGE,
  "Garden rose": saleable(`heat makes it small and rain balls it, shares ${MEMORY}.`, 0.85, 0.75, 0.8, 0.8),
  Lisianthus: saleable(`rain marks it, shares ${MEMORY}.`, 0.8, 0.8, 0.8, 0.8),
  Mint: OF_FOLIAGE,
  Ninebark: OF_FOLIAGE,
  Ranunculus: saleable(`17 in 20, ${MEMORY}.`, 0.85, 0.85, 0.85, 0.85),
  "Raspberry leaf": OF_FOLIAGE,
  Snapdragon: OF_SNAPDRAGON,
  "Sweet pea": saleable(`stems are short in heat, shares ${MEMORY}.`, 0.9, 0.75, 0.85, 0.9),
  Zinnia: saleable(`rain and mildew mark it, shares ${MEMORY}.`, 0.9, 0.85, 0.85, 0.85),
};

const IN_TUNNELS: Readonly<Record<string, Saleable>> = {
  Lisianthus: saleable(`kept dry, shares ${MEMORY}.`, 0.85, 0.85, 0.85, 0.85),
  Snapdragon: saleable(
    "65 to 89 % of tunnel stems are published as marketable for northern Utah (SNAP-LEWIS); the middle of that, and its lower end in summer, are our reading.",
    ...([0.77, 0.65, 0.77, 0.77] as const),
  ),
};

/** The crop with what is fit to sell of the stems of its curves, season by season. A grower's own share graded out takes its place [F17]. */
export const withSaleable = (crop: CatalogueCrop): CatalogueCrop => ({
  ...crop,
  curves: crop.curves.map((curve) => withShares(curve, saleableOf(crop.name, curve.treatment))),
});

const saleableOf = (cropName: string, treatment: CatalogueCurve["treatment"]): Saleable =>
  (treatment === "tunnel" ? IN_TUNNELS[cropName] : undefined) ?? SALEABLE[cropName] ?? NINE_IN_TEN;

const withShares = (curve: CatalogueCurve, { saleableBySeason, note }: Saleable): CatalogueCurve => ({
  ...curve,
  saleableBySeason: [...saleableBySeason],
  note: `${curve.note} Fit to sell of the stems cut: ${note}`.trim(),
});
