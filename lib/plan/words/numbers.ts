const whole = new Intl.NumberFormat("en-US", { maximumFractionDigits: 0 });
const oneDecimal = new Intl.NumberFormat("en-US", { maximumFractionDigits: 1 });
const twoDecimals = new Intl.NumberFormat("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 });

/** "1,240" */
export const inWholes = (count: number): string => whole.format(count);

/** "1.5" */
export const inTenths = (count: number): string => oneDecimal.format(count);

/** The word that goes with a count, a noun or a verb: "stem" or "stems", "goes" or "go". */
export const forCount = (count: number, one: string, many = `${one}s`): string => (count === 1 ? one : many);

/** "1,240 stems", "1 stem" */
export const countOf = (count: number, one: string, many?: string): string =>
  `${whole.format(count)} ${forCount(count, one, many)}`;

/** "12.5 hours", "1 hour": in tenths. */
export const hoursInWords = (hours: number): string =>
  `${inTenths(hours)} ${inTenths(hours) === "1" ? "hour" : "hours"}`;

/** "$12.50". Money is kept in cents; the sign is the dollar's, since the built-in prices are in it. */
export const inMoney = (cents: number): string =>
  `${cents < 0 ? "−" : ""}$${twoDecimals.format(Math.abs(cents) / 100)}`;

/** "$1,240", for sums where cents are false precision. */
export const inRoundMoney = (cents: number): string => `${cents < 0 ? "−" : ""}$${whole.format(Math.abs(cents) / 100)}`;

/** "85 %" */
export const inPercent = (share: number): string => `${whole.format(share * 100)} %`;

/** A count in a sentence: "one" to "twelve" in words, figures from 13 on. */
const WORDS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
export const inWords = (count: number): string => WORDS[count] ?? inWholes(count);
