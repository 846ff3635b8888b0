/**
 * Every built-in crop held against what was found of it: published figures of its hold, its timing and its stems, each by the id of its source. Ids that are
 * listed in the catalogue have their address there; the others were found and left aside, each for a reason. Gone through on 2026-11-26.
 */

export type Figure = "hold" | "timing" | "yield";

/** Numbers that a source says for the crop itself, with the place they hold for. In the order of the catalogue. */
export const PUBLISHED: readonly {
  readonly crop: string;
  readonly number: string;
  readonly count: number;
  readonly source: string;
  readonly place: string;
}[] = [
  // Prices of 2021 by the bunch of ten.
  { crop: "Anemone", number: "bunchStems", count: 10, source: "ANEM-2023", place: "Boston terminal market" },
  // "Fire Chief" tolerated no storage at 3 °C, dry or wet.
  { crop: "Crested celosia", number: "holdDays", count: 0, source: "AHMAD-CEL", place: "a store at 3 °C" },
  // Four weeks wet or dry did no damage.
  { crop: "Eucalyptus", number: "stretchDays", count: 28, source: "FORREST-1991", place: "a store at 5 °C" },
  // "Chantilly Yellow", two weeks dry without loss.
  { crop: "Snapdragon", number: "dryHoldDays", count: 14, source: "AHMAD-CEL", place: "a store at 3 °C" },
  // "Vivas Blue", up to two weeks dry.
  { crop: "Stock", number: "dryHoldDays", count: 14, source: "STOCK-VB", place: "a store at 2 °C" },
  { crop: "Sunflower", number: "holdDays", count: 3, source: "SUNF-2023", place: "a store at 5 °C, in water" },
  // "Summer Breeze": not branched, one flower a plant.
  { crop: "Sunflower", number: "field stems", count: 1, source: "ASCFG-2010S", place: "trial farms of North America" },
  { crop: "Zinnia", number: "holdDays", count: 2, source: "ZINNIA-2022", place: "a store at 1 °C, in water" },
];

const found = (hold: string, timing: string, stems: string): Readonly<Record<Figure, readonly string[]>> => ({
  hold: ids(hold),
  timing: ids(timing),
  yield: ids(stems),
});

const ids = (text: string): string[] => text.split(" ").filter((id) => id !== "");

/** What was found of each crop: its hold, its timing, its stems. */
export const CHECKED: Readonly<Record<string, Readonly<Record<Figure, readonly string[]>>>> = {
  Amaranth: found("", "", ""),
  Ammi: found("", "", ""),
  Anemone: found("CARGO-ANEM", "USU-ANEM ANEM-2023", "USU-ANEM ANEM-2023"),
  "Ball dahlia": found("DOLE-DAHLIA", "ASCFG-2018VT ATTRA-DAHLIA HANKINS", "ASCFG-2018DT HANKINS"),
  "Bells of Ireland": found("", "", "LATE-TUNNEL"),
  Celosia: found("ASHS-SIX", "", ""),
  "China aster": found("", "ASTER-SEED", ""),
  Chrysanthemum: found("WILLS-1998", "", ""),
  Cosmos: found("", "", ""),
  "Crested celosia": found("AHMAD-CEL", "CEL-2017", ""),
  Dahlia: found("DOLE-DAHLIA", "ASCFG-2018VT ATTRA-DAHLIA HANKINS", "ASCFG-2018DT HANKINS"),
  Delphinium: found("WILLS-1998", "UMAINE USU-DELTH", "USU-DELTH"),
  Eucalyptus: found("FORREST-1991", "", ""),
  Feverfew: found("", "", ""),
  Foxglove: found("", "UMAINE MASS", ""),
  "Garden rose": found("WILLS-1998 ASHS-WETDRY", "MASS ROSE-MINI", "ROSE-MS"),
  Gladiolus: found("", "", ""),
  Gomphrena: found("", "MBG-CLAY", "ASCFG-2012S ASCFG-2009S"),
  Hydrangea: found("", "", "HYD-VA"),
  Larkspur: found("", "LSU LARK-CORN USU-DELTH", "CORNELL-2010"),
  Lily: found("WILLS-1998", "UMAINE MASS", ""),
  Lisianthus: found("WILLS-1998", "USU-LISI LISI-FL88", "WIEN-2016 USU-LISI"),
  Marigold: found("ASHS-WETDRY", "MBG-CLAY", "ASCFG-2014S ASCFG-2012S"),
  Mint: found("", "", ""),
  Narcissus: found("NARC-STORE WILLS-1998", "UMAINE MASS", ""),
  Nigella: found("", "", ""),
  Ninebark: found("", "", ""),
  Peony: found("PEONY-2020A PEONY-2020B", "NCSU-PEONYQA PEONY-USU UMAINE MASS", "PEONY-USU"),
  Ranunculus: found("SUBZERO-2024", "USU-RANU RAN-2020 RAN-2023", "USU-RANU USU-RW2021 RAN-2023"),
  "Raspberry leaf": found("", "", ""),
  Scabiosa: found("", "UMAINE", ""),
  Snapdragon: found("AHMAD-CEL WILLS-1998", "SNAP-LEWIS SNAP-2015 VSU-TUN", "SNAP-LEWIS ASCFG-2013S"),
  Statice: found("WILLS-1998 LIM-LIB", "UMAINE", ""),
  Stock: found("STOCK-VB", "", "ORTIZ-2012"),
  Strawflower: found("", "", ""),
  Sunflower: found("SUNF-2023 FSHS-ZS", "SUN-2008W", "ASCFG-2010S SUN-P2004"),
  "Sweet pea": found("UCD-SPEA", "", ""),
  Tulip: found("WILLS-1998 TULIP-2022", "CORNELL-2010 MBG-1999", ""),
  Yarrow: found("ASHS-SIX", "UMAINE MASS MBG-LONG", "ASCFG-P2019"),
  Zinnia: found("ZINNIA-2022 FSHS-ZS ASHS-WETDRY", "ZIN-MCM ZIN-BC ZIN-MS2000", "ZIN-MS2008 ASCFG-2009S ORTIZ-2012"),
};

/** What was found and stands behind no number and in no note, by crop and source, and why. */
export const ASIDE: Readonly<Record<string, string>> = {
  "Ball dahlia DOLE-DAHLIA": "7 days at 1 °C cost up to 2 of vase life: a limit; common practice is shorter",
  "Ball dahlia HANKINS": "August, and 5 or 6 weak blooms, of tubers neither staked nor pinched: a floor",
  "China aster ASTER-SEED":
    "100 days from sowing in an unheated tunnel or outdoors in the United Kingdom; no place like zone 7a",
  "Crested celosia CEL-2017": "20 days, of a dwarf bedding kind in Sindh, Pakistan; the day it counts from is not told",
  "Dahlia DOLE-DAHLIA": "7 days at 1 °C cost up to 2 of vase life: a limit; common practice is shorter",
  "Dahlia HANKINS": "August, and 5 or 6 weak blooms, of tubers neither staked nor pinched: a floor",
  "Delphinium WILLS-1998": "1 to 2 days, read second-hand; 2, and 4 at a stretch, are common practice",
  "Foxglove MASS": "July and August of Massachusetts, as bands of a season",
  "Garden rose ASHS-WETDRY": "two weeks dry, of florists' roses, as a duration that was tried",
  "Garden rose MASS": "July and August of Massachusetts, as bands of a season, of landscape roses",
  "Hydrangea HYD-VA": "of H. macrophylla, which is not the one built in",
  "Larkspur CORNELL-2010": "42 % more stems pinched in one year and none in another; no count of stems",
  "Larkspur LARK-CORN": "in tunnels of Ithaca, New York; no curve for tunnels is built in",
  "Larkspur USU-DELTH": "in tunnels of northern Utah; no curve for tunnels is built in",
  "Lily MASS": "July and August of Massachusetts, as bands of a season",
  "Lisianthus LISI-FL88": "four to eight months from sowing in greenhouses of Florida; here plants are set out",
  "Narcissus MASS": "April and May of Massachusetts, as bands of a season",
  "Narcissus WILLS-1998": "7 to 21 days, read second-hand; the measured 2 days are the cautious figure",
  "Peony MASS": "May and June of Massachusetts, as bands of a season",
  "Peony PEONY-2020A": "12 and 16 weeks in bud and dry, in research stores",
  "Peony PEONY-2020B": "28 days in bud and dry; three weeks stay inside that, as common practice has it",
  "Peony UMAINE": "May and June of Maine, which is colder",
  "Ranunculus RAN-2020": "90 to 110 days as general advice for plantings that bloom in July and August",
  "Ranunculus RAN-2023": "the best treatment, pre-sprouted in November: 286 stems a square metre in a tunnel",
  "Ranunculus SUBZERO-2024": "below freezing, which is left out on purpose",
  "Scabiosa UMAINE": "of the perennial kind, which is another species",
  "Snapdragon VSU-TUN": "6 to 8 weeks from setting out in tunnels; the tunnel's curve goes by SNAP-LEWIS",
  "Snapdragon WILLS-1998": "3 to 28 days, read second-hand, a range that spans methods",
  "Statice LIM-LIB": "three days at 2 to 3 °C, of the perennial kind",
  "Statice UMAINE": "of the perennial kind, which is another species",
  "Stock ORTIZ-2012": "its abstract does not agree with itself whether tunnels gave more stems",
  "Sunflower FSHS-ZS": "two days of a shipment that was imitated",
  "Sunflower SUN-P2004": "4 to 6 flowers of branching plants; single-stem kinds are built in",
  "Sweet pea UCD-SPEA": "7 days at 1 °C only with a treatment against ethylene and sugar",
  "Tulip MBG-1999": "two kinds in bloom in the third week of April of one year, St. Louis",
  "Tulip WILLS-1998": "3 to 42 days, read second-hand, a range that spans methods; 3 are from memory",
  "Yarrow MASS": "July and August of Massachusetts, as bands of a season",
  "Yarrow MBG-LONG": "throughout summer, of one kind in St. Louis; no first day",
  "Zinnia ASHS-WETDRY": "tolerates no storage of a week or more, wet or dry: longer than is planned",
  "Zinnia FSHS-ZS": "two days of a shipment that was imitated, which agrees",
  "Zinnia ORTIZ-2012": "59 % more stems in tunnels of Indiana than in the field; no count of a plant",
  "Zinnia ZIN-BC": "77 days from sowing in the cool summer of coastal British Columbia",
  "Zinnia ZIN-MS2000": "30 to 35 days from setting out in the heat of a Mississippi July",
};
