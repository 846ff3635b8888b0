import type { BareCrop, TradedCrop } from "#lib/domain/catalogue-types";
import { FROM_MEMORY } from "#lib/domain/sourced";
import type { Colour } from "#lib/domain/words";

/** The months of a range, both included; one that begins after it ends runs over New Year. January is 1. */
const months = (first: number, last: number): number[] =>
  Array.from({ length: ((last - first + 12) % 12) + 1 }, (_, index) => ((first - 1 + index) % 12) + 1);

/** Grown for the trade somewhere in every month. */
const ALL_YEAR = months(1, 12);

type Trade = readonly [months: readonly number[], ...colours: readonly Colour[]];

const DAHLIA: Trade = [
  months(7, 10),
  ...(["white", "cream", "blush", "pink", "coral", "peach", "apricot", "orange", "yellow"] as const),
  ...(["red", "burgundy", "plum", "lavender", "purple", "bronze"] as const),
];

/**
 * When wholesalers of the eastern United States have a flower, home-grown or flown in, and the colours that it is sold in undyed. All from memory: no
 * published table was found. The grower's own wholesaler knows better, and what she writes overrules it.
 */
const TRADE: Readonly<Record<string, Trade>> = {
  Amaranth: [months(7, 11), "burgundy", "green", "bronze"],
  Ammi: [ALL_YEAR, "white"],
  Anemone: [months(10, 5), "white", "blush", "pink", "red", "burgundy", "purple", "blue"],
  "Ball dahlia": DAHLIA,
  "Bells of Ireland": [ALL_YEAR, "green"],
  Celosia: [months(6, 11), "pink", "orange", "yellow", "red", "burgundy", "green"],
  "China aster": [months(6, 11), "white", "pink", "lavender", "purple", "blue", "red"],
  Chrysanthemum: [ALL_YEAR, "white", "cream", "pink", "yellow", "bronze", "red", "burgundy", "lavender", "green"],
  Cosmos: [months(6, 10), "white", "blush", "pink", "burgundy"],
  "Crested celosia": [months(6, 11), "pink", "orange", "yellow", "red", "burgundy", "green"],
  Dahlia: DAHLIA,
  Delphinium: [ALL_YEAR, "white", "blue", "lavender", "purple"],
  Eucalyptus: [ALL_YEAR, "green", "silver"],
  Feverfew: [ALL_YEAR, "white", "yellow"],
  Foxglove: [months(4, 7), "white", "cream", "pink", "apricot", "lavender", "purple"],
  "Garden rose": [
    ALL_YEAR,
    "white",
    "cream",
    "blush",
    "pink",
    "peach",
    "apricot",
    "coral",
    "yellow",
    "red",
    "burgundy",
    "lavender",
  ],
  Gladiolus: [ALL_YEAR, "white", "pink", "peach", "orange", "yellow", "red", "purple", "green"],
  Gomphrena: [months(6, 10), "white", "pink", "red", "orange", "purple"],
  Hydrangea: [ALL_YEAR, "white", "pink", "blue", "green", "burgundy"],
  Larkspur: [months(4, 10), "white", "pink", "lavender", "purple", "blue"],
  Lily: [ALL_YEAR, "white", "pink", "yellow", "orange", "burgundy"],
  Lisianthus: [ALL_YEAR, "white", "cream", "blush", "pink", "apricot", "lavender", "purple", "green"],
  Marigold: [months(6, 11), "orange", "yellow", "cream"],
  Mint: [months(5, 10), "green"],
  Narcissus: [months(12, 4), "white", "cream", "yellow"],
  Nigella: [months(3, 9), "white", "pink", "blue"],
  Ninebark: [months(5, 10), "burgundy", "bronze", "green"],
  Peony: [months(4, 7), "white", "cream", "blush", "pink", "coral", "red", "burgundy"],
  Ranunculus: [
    months(11, 5),
    "white",
    "cream",
    "blush",
    "pink",
    "coral",
    "peach",
    "apricot",
    "orange",
    "yellow",
    "red",
    "burgundy",
  ],
  "Raspberry leaf": [months(5, 10), "green"],
  Scabiosa: [months(4, 11), "white", "pink", "lavender", "blue", "burgundy", "plum"],
  Snapdragon: [ALL_YEAR, "white", "blush", "pink", "peach", "orange", "yellow", "red", "burgundy", "lavender"],
  Statice: [ALL_YEAR, "white", "pink", "peach", "yellow", "lavender", "purple", "blue"],
  Stock: [ALL_YEAR, "white", "cream", "pink", "peach", "burgundy", "lavender", "purple"],
  Strawflower: [months(6, 10), "white", "pink", "peach", "orange", "yellow", "red", "bronze"],
  Sunflower: [ALL_YEAR, "yellow", "orange", "burgundy"],
  "Sweet pea": [months(1, 6), "white", "cream", "blush", "pink", "coral", "red", "plum", "lavender", "purple"],
  Tulip: [
    months(11, 5),
    "white",
    "cream",
    "pink",
    "peach",
    "apricot",
    "orange",
    "yellow",
    "red",
    "burgundy",
    "plum",
    "purple",
    "green",
  ],
  Yarrow: [months(4, 10), "white", "cream", "pink", "yellow", "red", "peach"],
  Zinnia: [
    months(6, 10),
    "white",
    "cream",
    "pink",
    "coral",
    "peach",
    "apricot",
    "orange",
    "yellow",
    "red",
    "burgundy",
    "lavender",
    "green",
  ],
};

/** The crop with its months and colours in trade. A crop that the list lacks is to be had always and in any colour. */
export function withTrade(crop: BareCrop): TradedCrop {
  const [inTrade, ...buyInColours] = TRADE[crop.name] ?? [[]];
  return { ...crop, buyInColours, buyInMonths: inTrade.toSorted((a, b) => a - b), tradeOrigin: FROM_MEMORY };
}
