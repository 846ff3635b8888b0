/** The job a stem does in a piece. Chosen in the recipe; a crop lists the roles it can take. Focal first, always. */
export const ROLES = ["focal", "secondary", "line", "filler", "foliage", "accent"] as const;
export type Role = (typeof ROLES)[number];

/** The shape of the flower itself, fixed by the plant. */
export const SHAPES = ["line", "mass", "form", "filler", "foliage"] as const;

/** How a planting is grown; each has its own bloom curve. */
export const TREATMENTS = ["field", "spring-planted", "kept-in-ground", "autumn-planted", "tunnel"] as const;
export type Treatment = (typeof TREATMENTS)[number];

/** What a treatment means, in one plain phrase. */
export const TREATMENT_WORDS: Record<Treatment, string> = {
  field: "in the field",
  "spring-planted": "dug and replanted in spring",
  "kept-in-ground": "kept in the ground over winter",
  "autumn-planted": "planted or sown in autumn",
  tunnel: "under a tunnel",
};

/** Where a booking stands. Cancelled bookings ask for nothing. */
export const STATUSES = ["enquiry", "held", "confirmed", "cancelled"] as const;
export type Status = (typeof STATUSES)[number];

/**
 * The colours a stem or a palette can have. Plain words of the trade, coarse on purpose: a palette is promised in words like these.
 */
export const COLOURS = [
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
  "plum",
  "lavender",
  "purple",
  "blue",
  "bronze",
  "green",
  "silver",
] as const;
export type Colour = (typeof COLOURS)[number];

/** Colours that go with every palette, the first to take first: `common practice` for what fills and greens a piece. */
export const NEUTRALS: readonly Colour[] = ["white", "cream", "green", "silver"];

/**
 * The colours that a recipe's line may take: the booking's palette alone, the palette and then the {@link NEUTRALS}, or every colour. What the
 * booking will not have is left out of each.
 */
export const LINE_COLOURS = ["palette", "palette-or-neutral", "any"] as const;
export type LineColours = (typeof LINE_COLOURS)[number];

/** What a line's colours mean, in one plain phrase. */
export const LINE_COLOURS_WORDS: Record<LineColours, string> = {
  palette: "the booking’s palette",
  "palette-or-neutral": "the palette, or white, cream, green, silver",
  any: "any colour",
};

/** How big the head of a stem is when it is cut. */
export const HEAD_SIZES = ["small", "medium", "large"] as const;
export type HeadSize = (typeof HEAD_SIZES)[number];

/** How long a stem is cut. A long one can be cut short. */
export const STEM_LENGTHS = ["short", "long"] as const;
export type StemLength = (typeof STEM_LENGTHS)[number];

/** What a stem does for the hours of an event without water. */
export const OUT_OF_WATER = ["holds", "wilts"] as const;
export type OutOfWater = (typeof OUT_OF_WATER)[number];

/**
 * What a line may ask of a stem beside its role and colours. Sizes of head are alternatives, one of which is enough; of the rest each is asked for.
 */
export const STEM_ASKS = ["small head", "medium head", "large head", "long stem", "out of water"] as const;
export type StemAsk = (typeof STEM_ASKS)[number];

export const UNITS = ["us", "metric"] as const;
export type Units = (typeof UNITS)[number];
