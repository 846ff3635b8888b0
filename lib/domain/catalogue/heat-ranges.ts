import { FROM_MEMORY, type Origin } from "#lib/domain/sourced";
import type { Treatment } from "#lib/domain/words";
import { ourReadingOf } from "./marked";

/** Above what, and up to what, a crop grows faster with warmth, and where it stands still; degrees Celsius. `note` says what is published of it. */
type HeatRange = {
  readonly baseC: number;
  readonly ceilingC: number | null;
  readonly limitC: number | null;
  readonly origin: Origin;
  readonly note: string;
};

const range = (baseC: number, ceilingC: number | null = null, origin: Origin = FROM_MEMORY, note = ""): HeatRange => ({
  baseC,
  ceilingC,
  limitC: null,
  origin,
  note,
});

/** Tender crops grow above 10 °C (50 °F), hardy ones above 4.4 °C (40 °F), where nothing better is known: from memory. */
const WARM = range(10);
const COOL = range(4.4);

/**
 * In a hot summer dahlias wait for cooler days: with a mere ceiling, those set out in Richmond in the middle of May would start in July, where late August is
 * common practice. What is published is that flowers develop faster up to 25 °C, and that they are set later at 30 °C; that nothing is added at 30 °C, and as much less
 * as it is nearer, is our reading. It holds both Asheville and Richmond to the common practice of zone 7.
 */
const DAHLIA: HeatRange = {
  baseC: 10,
  ceilingC: 25,
  limitC: 30,
  origin: ourReadingOf("BRONDUM"),
  note: "Flowers develop faster from 10 up to 25 °C and are set later at 30 °C (BRONDUM); a base of 10 °C and a standstill at 30 °C are our reading.",
};

/**
 * Clumps in the ground sprout in cooler soil than tubers are planted in: 5 °C is where cold hurts the plant (ASCFG-2021), and that growth begins there is our
 * reading. With the base of a planted tuber, Richmond would start twelve days before Asheville, with this one eight.
 */
const DAHLIA_IN_GROUND: HeatRange = {
  ...DAHLIA,
  baseC: 5,
  origin: ourReadingOf("ASCFG-2021"),
  note: "Cold hurts it below 5 °C (ASCFG-2021), flowers develop faster up to 25 °C and are set later at 30 °C (BRONDUM): that it grows from 5 °C and stands still at 30 °C is our reading.",
};

const RANGES: Readonly<Record<string, HeatRange>> = {
  "Ball dahlia": DAHLIA,
  Dahlia: DAHLIA,
  Gladiolus: range(5, null, ourReadingOf("GLAD-2017"), "The base is that from planting to emergence (GLAD-2017)."),
  Gomphrena: range(9),
  Peony: range(
    4.4,
    25,
    FROM_MEMORY,
    "From shoot to flower it is faster up to 25 °C (PEO-FORCE); the base is from memory.",
  ),
  Snapdragon: range(
    4.6,
    28,
    ourReadingOf("SNAP-2015"),
    "The base is nobody's figure: 4.6 °C is our own fit to eight published times to flower; no faster above 28 °C (SNAP-2015).",
  ),
  Sunflower: range(6.7),
  Zinnia: range(8, 27),
};

/** Between which temperatures the warmth of a crop counts under a treatment: its own, else its class's. */
export const heatRangeOf = (cropName: string, tender: boolean, treatment: Treatment): HeatRange =>
  treatment === "kept-in-ground" ? DAHLIA_IN_GROUND : (RANGES[cropName] ?? (tender ? WARM : COOL));
