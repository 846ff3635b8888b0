import { describe, expect, test } from "vitest";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { SOURCES } from "#lib/domain/catalogue/sources";
import type { Treatment } from "#lib/domain/words";
import { forecast } from "#lib/plan/road/forecast";
import { planting, snapshot } from "../small-farm";
import { totalStemsPerPlant } from "./catalogue-curve";

/** Plants on a square metre when they stand so many inches apart in both directions (1 inch = 0.0254 m). */
const plantsPerSquareMetre = (spacingInches: number): number => 1 / (spacingInches * 0.0254) ** 2;

/** 1 square metre is 10.7639 square feet. */
const SQUARE_FEET_PER_SQUARE_METRE = 10.7639;

type BedCheck = {
  readonly crop: string;
  readonly treatment: Treatment;
  readonly plantsPerSquareMetre: number;
  /** The lowest and the highest share of stems that is marketable; 1 where the published count is of all stems. */
  readonly marketableShare: readonly [least: number, most: number];
  /** Published stems per square metre, with the published error added where there is one. */
  readonly published: readonly [least: number, most: number];
  readonly source: string;
};

const LISIANTHUS_PLANTS = 1.8 * SQUARE_FEET_PER_SQUARE_METRE; // published, WIEN-2016: 1.8 plants per square foot, unpinched

/**
 * Spacing is common practice except for lisianthus. Marketable shares: anemone 0.8, about a fifth too short to sell (ANEM-2023); snapdragon as
 * published (SNAP-LEWIS); the others from memory.
 */
const BEDS: readonly BedCheck[] = [
  // ANEM-2023: 85 ± 4 in the field, 142 ± 7 in the tunnel, marketable. https://doi.org/10.3390/horticulturae9010002
  bed("Anemone", "field", plantsPerSquareMetre(6), [0.8, 0.8], [81, 89], "ANEM-2023"),
  bed("Anemone", "tunnel", plantsPerSquareMetre(6), [0.8, 0.8], [135, 149], "ANEM-2023"),
  // USU-RW2021: 33 to 151 in the field, 61 to 149 in the tunnel, marketable. https://digitalcommons.usu.edu/researchweek/ResearchWeek2021/All2021/224
  bed("Ranunculus", "field", plantsPerSquareMetre(6), [0.85, 0.85], [33, 151], "USU-RW2021"),
  bed("Ranunculus", "autumn-planted", plantsPerSquareMetre(6), [0.85, 0.85], [33, 151], "USU-RW2021"),
  bed("Ranunculus", "tunnel", plantsPerSquareMetre(6), [0.85, 0.85], [61, 149], "USU-RW2021"),
  // SNAP-LEWIS: 111 to 162 in the field, 103 to 110 in the tunnel, all stems. https://journals.ashs.org/search?f_0=author&q_0=Maegen+Lewis
  bed("Snapdragon", "field", plantsPerSquareMetre(9), [1, 1], [111, 162], "SNAP-LEWIS"),
  bed("Snapdragon", "tunnel", plantsPerSquareMetre(9), [1, 1], [103, 110], "SNAP-LEWIS"),
  // The same, marketable: 34 to 58 % in the field, 65 to 89 % in the tunnel; the products of the published ends.
  bed("Snapdragon", "field", plantsPerSquareMetre(9), [0.34, 0.58], [38, 94], "SNAP-LEWIS"),
  bed("Snapdragon", "tunnel", plantsPerSquareMetre(9), [0.65, 0.89], [67, 98], "SNAP-LEWIS"),
  // USU-LISI: 3 to 5 per square foot in the field, 6 to 10 in the tunnel, marketable. https://issuu.com./usuextension/docs/lisianthus_cut_flower_production_in_utah
  bed("Lisianthus", "field", LISIANTHUS_PLANTS, [0.8, 0.8], [32.3, 53.8], "USU-LISI"),
  bed("Lisianthus", "tunnel", LISIANTHUS_PLANTS, [0.85, 0.85], [64.6, 107.6], "USU-LISI"),
  // USU-DELTH: up to 37 in the first year and up to 70 in the second, tunnel. https://digitalcommons.usu.edu/etd2023/528
  bed("Delphinium", "tunnel", plantsPerSquareMetre(12), [0.9, 0.9], [37, 70], "USU-DELTH"),
  // PEONY-USU: 16.1 to 20.8 in the field, 15.7 to 19.4 in the tunnel. https://discovery.researcher.life/topic/coral-charm/1974703?page=1
  bed("Peony", "field", plantsPerSquareMetre(24), [1, 1], [16.1, 20.8], "PEONY-USU"),
  bed("Peony", "tunnel", plantsPerSquareMetre(24), [1, 1], [15.7, 19.4], "PEONY-USU"),
];

function bed(
  crop: string,
  treatment: Treatment,
  plants: number,
  marketableShare: BedCheck["marketableShare"],
  published: BedCheck["published"],
  source: string,
): BedCheck {
  return { crop, treatment, plantsPerSquareMetre: plants, marketableShare, published, source };
}

describe("a square metre of bed gives what was published", () => {
  test.each(BEDS)("$crop, $treatment: $published stems ($source)", (check) => {
    expect(SOURCES).toHaveProperty([check.source]);
    const stems = totalStemsPerPlant(check.crop, check.treatment) * check.plantsPerSquareMetre;
    expect(stems * check.marketableShare[0]).toBeGreaterThanOrEqual(check.published[0]);
    expect(stems * check.marketableShare[1]).toBeLessThanOrEqual(check.published[1]);
  });
});

describe("the forecast of a bed of 18 square metres gives what was published", () => {
  test.each(BEDS)("$crop, $treatment: $published stems per square metre ($source)", (check) => {
    const [least, most] = check.marketableShare.map((share) => forecastStems(check, share) / BED_SQUARE_METRES);
    expect(least).toBeGreaterThanOrEqual(check.published[0]);
    expect(most).toBeLessThanOrEqual(check.published[1]);
  });
});

describe("by the curve's own shares fit to sell, a bed of 18 square metres gives what was published as marketable", () => {
  test.each(BEDS.filter(({ marketableShare }) => marketableShare[1] < 1))(
    "$crop, $treatment: $published stems per square metre ($source)",
    (check) => {
      const stems = forecastStems(check, null) / BED_SQUARE_METRES;
      expect(stems).toBeGreaterThanOrEqual(check.published[0]);
      expect(stems).toBeLessThanOrEqual(check.published[1]);
    },
  );
});

const BED_SQUARE_METRES = 18;

/** Saleable stems that open in a season in a bed of the crop, by the tool's own forecast, without frost; of no share told those that the curve tells. */
function forecastStems(
  { crop: name, treatment, plantsPerSquareMetre: plants }: BedCheck,
  marketable: number | null,
): number {
  const found = CATALOGUE.find((row) => row.name === name);
  const curve = found?.curves.find((row) => row.treatment === treatment);
  if (!found || !curve) throw new RangeError(`no curve of ${name} under ${treatment}`);
  const { curves: _, ...crop } = found;
  const farm = snapshot({
    crops: [{ id: 1, ...crop, tender: false }],
    curves: [{ id: 1, cropId: 1, varietyId: null, plantingId: null, ...curve }],
    plantings: [
      planting({
        ...{ id: 1, treatment, plantCount: Math.round(BED_SQUARE_METRES * plants) },
        gradeOutShare: marketable === null ? null : 1 - marketable,
      }),
    ],
  });
  return forecast(farm, 2027).plantings[0].openedStems;
}

/** Stems per plant as published, all stems unless said. */
const PLANTS = [
  // Close to 10 on average, some farms 30. https://ascfgmembers.org/publications/2019-winter-2019-ascfg-dahlia-trial-report/
  { crop: "Dahlia", treatment: "spring-planted", least: 9, most: 11, source: "ASCFG-2018DT" },
  { crop: "Ball dahlia", treatment: "spring-planted", least: 9, most: 11, source: "ASCFG-2018DT" },
  // No published count of dahlias kept in the ground was found; they stay below the best farms.
  { crop: "Dahlia", treatment: "kept-in-ground", least: 10, most: 30, source: "ASCFG-2018DT" },
  { crop: "Ball dahlia", treatment: "kept-in-ground", least: 10, most: 30, source: "ASCFG-2018DT" },
  // 3 to 7 typical of United States studies. https://doi.org/10.3390/horticulturae9010002
  { crop: "Anemone", treatment: "autumn-planted", least: 3, most: 7, source: "ANEM-2023" },
  { crop: "Anemone", treatment: "tunnel", least: 3, most: 7, source: "ANEM-2023" },
  // About 7. https://dokumen.tips/documents/2013-ascfg-cut-flower-seed-trials.html
  { crop: "Snapdragon", treatment: "field", least: 6.5, most: 7.5, source: "ASCFG-2013S" },
  // 14 on average. https://pdfslide.net/documents/2014-ascfg-cut-flower-seed-trials-nc-state-2014-ascfg-cut-flower-seed-trials.html
  { crop: "Marigold", treatment: "field", least: 13.5, most: 14.5, source: "ASCFG-2014S" },
  // Single-stem: 1. https://vdocuments.mx/the-outer-petals-of-zinnia-aqueen-red-limea-2010-ascfg-seed-trial-results-the.html
  { crop: "Sunflower", treatment: "field", least: 0.999, most: 1.001, source: "ASCFG-2010S" },
] as const;

describe("a plant gives what was published", () => {
  test.each(PLANTS)(
    "$crop, $treatment: $least to $most stems ($source)",
    ({ crop, treatment, least, most, source }) => {
      expect(SOURCES).toHaveProperty([source]);
      expect(totalStemsPerPlant(crop, treatment)).toBeGreaterThanOrEqual(least);
      expect(totalStemsPerPlant(crop, treatment)).toBeLessThanOrEqual(most);
    },
  );

  /** 6.8 stems per square foot at 1.8 plants, the mean of tunnel and field: https://ashs.confex.com/ashs/2016/webprogramarchives/Paper24402.html */
  test("lisianthus: the mean of field and tunnel is within 5 % of the published 6.8 / 1.8 stems (WIEN-2016)", () => {
    const mean = (totalStemsPerPlant("Lisianthus", "field") + totalStemsPerPlant("Lisianthus", "tunnel")) / 2;
    expect(Math.abs(mean / (6.8 / 1.8) - 1)).toBeLessThan(0.05);
  });
});
