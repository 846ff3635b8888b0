import { describe, expect, test } from "vitest";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { SOURCES } from "#lib/domain/catalogue/sources";
import { catalogueCrop } from "./catalogue-curve";

/**
 * Crops of the catalogue that a published list names as not to be eaten. A crop that is absent here is not thereby safe.
 * CSU-EDIBLE: http://www.ext.colostate.edu/pubs/Garden/07237.html (seeds only, for sweet pea)
 * MDPC: http://perryhallms.bcps.org/UserFiles/Servers/Server_4202216/File/MDPoisonCenterlPoisonousPlants_2012.txt
 * HOME-POISON: https://docslib.org/doc/12803669/poisonous-plants-around-the-home-for-suspected-poisoning-call-1-800-222-1222-or-911
 */
const POISONOUS_IF_EATEN = [
  { crop: "Yarrow", source: "CSU-EDIBLE" },
  { crop: "Larkspur", source: "CSU-EDIBLE" },
  { crop: "Delphinium", source: "CSU-EDIBLE" },
  { crop: "Foxglove", source: "CSU-EDIBLE" },
  { crop: "Sweet pea", source: "CSU-EDIBLE" },
  { crop: "Narcissus", source: "CSU-EDIBLE" },
  { crop: "Chrysanthemum", source: "MDPC" },
  { crop: "Gladiolus", source: "MDPC" },
  { crop: "Hydrangea", source: "MDPC" },
  { crop: "Ranunculus", source: "HOME-POISON" },
];

/**
 * Crops that a published source names as hard on skin or airways.
 * HAZMAP: https://haz-map.com/Agents/1861 · CUTIS-DAFF: https://mdedge9-ma1.mdedge.com/dermatology/article/260431/contact-dermatitis/botanical-briefs-daffodils-narcissus-species
 */
const HARD_ON_SKIN_OR_AIRWAYS = [
  { crop: "Narcissus", says: /sap/i, source: "CUTIS-DAFF" },
  { crop: "Ranunculus", says: /sap/i, source: "HOME-POISON" },
  { crop: "Tulip", says: /skin allergy/i, source: "HAZMAP" },
  { crop: "Chrysanthemum", says: /skin allergy/i, source: "HAZMAP" },
  { crop: "Feverfew", says: /skin allergy/i, source: "HAZMAP" },
  { crop: "Lily", says: /hives/i, source: "HAZMAP" },
  { crop: "Statice", says: /asthma/i, source: "HAZMAP" },
  { crop: "Bells of Ireland", says: /asthma/i, source: "HAZMAP" },
];

describe("cautions", () => {
  test.each(POISONOUS_IF_EATEN)("$crop is to be kept off cakes and food ($source)", ({ crop, source }) => {
    expect(SOURCES).toHaveProperty([source]);
    expect(catalogueCrop(crop).cautions.join(" · ")).toMatch(/poisonous if eaten.*cakes.*food/i);
  });

  test("no other crop is called poisonous: the word is kept for what a source names", () => {
    const named = POISONOUS_IF_EATEN.map(({ crop }) => crop).sort();
    const called = CATALOGUE.filter(({ cautions }) => /poisonous/i.test(cautions.join(" "))).map(({ name }) => name);
    expect(called).toEqual(named);
  });

  test.each(HARD_ON_SKIN_OR_AIRWAYS)(
    "$crop carries its caution to people who work with it ($source)",
    ({ crop, says, source }) => {
      expect(SOURCES).toHaveProperty([source]);
      expect(catalogueCrop(crop).cautions.join(" · ")).toMatch(says);
    },
  );

  test.each([
    { crop: "Anemone", says: /buttercup family.*gloves.*\(from memory\)/i },
    { crop: "Lily", says: /cat.*vase water.*\(from memory\)/i },
    { crop: "Narcissus", says: /shared water.*\(common practice\)/i },
    { crop: "Garden rose", says: /thorns.*\(common practice\)/i },
  ])("$crop carries what no source was seen for, and says so in the words", ({ crop, says }) => {
    expect(catalogueCrop(crop).cautions.join(" · ")).toMatch(says);
  });
});
