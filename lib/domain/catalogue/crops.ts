import type { CatalogueCrop } from "#lib/domain/catalogue-types";
import { ACCENT_CROPS } from "./accent-crops";
import { withAges } from "./ages";
import { withEnds } from "./bloom-ends";
import { withClocks } from "./clocks";
import { DAHLIAS } from "./dahlias";
import { FILLER_CROPS } from "./filler-crops";
import { FOLIAGE_CROPS } from "./foliage-crops";
import { LINE_CROPS } from "./line-crops";
import { withSaleable } from "./saleable";
import { SPRING_CROPS } from "./spring-crops";
import { withTraits } from "./stem-traits";
import { withStore } from "./stores";
import { SUMMER_FACES } from "./summer-faces";
import { SUPPORTING_FACES } from "./supporting-faces";
import { TALL_SPIRES } from "./tall-spires";
import { withTrade } from "./trade-seasons";

/**
 * The built-in crops with their bloom curves, in alphabetical order: what a new farm starts from and may overrule, number by number.
 * Names are unique. Dates are for USDA zone 7a; each number carries its mark, and `source` is an id of `SOURCES`. Stems per plant are all
 * stems cut, before the share that is graded out. No hold, in water or dry, is longer than the published limit for the crop.
 */
export const CATALOGUE: readonly CatalogueCrop[] = [
  ...DAHLIAS,
  ...SPRING_CROPS,
  ...SUMMER_FACES,
  ...SUPPORTING_FACES,
  ...LINE_CROPS,
  ...TALL_SPIRES,
  ...FILLER_CROPS,
  ...ACCENT_CROPS,
  ...FOLIAGE_CROPS,
]
  .map(withTrade)
  .map(withStore)
  .map(withTraits)
  .map(withClocks)
  .map(withEnds)
  .map(withAges)
  .map(withSaleable)
  .sort((a, b) => (a.name < b.name ? -1 : 1));
