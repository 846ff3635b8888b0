import type { Colour, Role, Status, Treatment } from "./words";

/**
 * Other words for ours, as growers, florists and their clients write them: all `common practice`. A word that could be two of ours
 * lists both, and is refused with them, never guessed.
 */
export type OtherWords<T extends string> = Readonly<Record<string, T | readonly T[]>>;

export const COLOUR_WORDS: OtherWords<Colour> = {
  snow: "white",
  ivory: "cream",
  "off white": "cream",
  vanilla: "cream",
  "pale pink": "blush",
  "light pink": "blush",
  "soft pink": "blush",
  "baby pink": "blush",
  rose: "pink",
  "dusty rose": "pink",
  "dusty pink": "pink",
  "dusky pink": "pink",
  "hot pink": "pink",
  tangerine: "orange",
  lemon: "yellow",
  mustard: "yellow",
  scarlet: "red",
  crimson: "red",
  wine: "burgundy",
  maroon: "burgundy",
  bordeaux: "burgundy",
  aubergine: "plum",
  eggplant: "plum",
  lilac: "lavender",
  violet: "purple",
  navy: "blue",
  "dusty blue": "blue",
  "light blue": "blue",
  "sky blue": "blue",
  copper: "bronze",
  sage: "green",
  "sage green": "green",
  olive: "green",
  lime: "green",
  gray: "silver",
  grey: "silver",
  "silver grey": "silver",
  "silver gray": "silver",
  butter: ["cream", "yellow"],
  champagne: ["cream", "blush", "peach"],
  nude: ["cream", "blush", "peach"],
  salmon: ["coral", "peach"],
  rust: ["bronze", "orange"],
  terracotta: ["bronze", "orange"],
  gold: ["yellow", "bronze"],
  fuchsia: ["pink", "purple"],
  magenta: ["pink", "purple"],
  mauve: ["lavender", "pink"],
  periwinkle: ["lavender", "blue"],
  raspberry: ["pink", "red"],
};

export const ROLE_WORDS: OtherWords<Role> = {
  face: "focal",
  "face flower": "focal",
  "focal flower": "focal",
  spike: "line",
  "line flower": "line",
  greenery: "foliage",
  green: "foliage",
  leaf: "foliage",
  airy: ["filler", "accent"],
  supporting: ["secondary", "filler"],
};

export const STATUS_WORDS: OtherWords<Status> = {
  inquiry: "enquiry",
  quote: "enquiry",
  hold: "held",
  "on hold": "held",
  tentative: "held",
  booked: "confirmed",
  "deposit paid": "confirmed",
  canceled: "cancelled",
};

export const OTHER_TREATMENTS: OtherWords<Treatment> = {
  outdoor: "field",
  overwintered: "kept-in-ground",
  "left in ground": "kept-in-ground",
  "fall planted": "autumn-planted",
  "autumn sown": "autumn-planted",
  "fall sown": "autumn-planted",
  replanted: "spring-planted",
  "high tunnel": "tunnel",
  "hoop house": "tunnel",
  greenhouse: "tunnel",
};

/** One word or spelling for each thing that a piece is called by; a piece is found by them whichever its recipe is named with. */
export const PIECE_WORDS: Readonly<Record<string, string>> = {
  bride: "bridal",
  bridesmaid: "attendant",
  maid: "attendant",
  buttonhole: "boutonniere",
  boutonnière: "boutonniere",
  bout: "boutonniere",
  centerpiece: "centrepiece",
  "center piece": "centrepiece",
  "centre piece": "centrepiece",
  arbor: "arch",
  arbour: "arch",
  posy: "bouquet",
};

/** The words that say what a piece is; "low" or "full" alone do not. */
export const PIECE_NOUNS: readonly string[] = [
  "bridal",
  "attendant",
  "boutonniere",
  "corsage",
  "centrepiece",
  "compote",
  "bud",
  "arch",
  "aisle",
  "crown",
  "cake",
  "garland",
];

/** Short names of crops. */
export const CROP_WORDS: Readonly<Record<string, string>> = {
  eustoma: "lisianthus",
  lisi: "lisianthus",
  snap: "snapdragon",
  mum: "chrysanthemum",
  glad: "gladiolus",
  euc: "eucalyptus",
  ranunc: "ranunculus",
};
