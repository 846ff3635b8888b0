const AND = new Intl.ListFormat("en-GB", { type: "conjunction" });
const OR = new Intl.ListFormat("en-GB", { type: "disjunction" });

/** "D1", "D1 and D4", "D1, D4 and D7"; empty when there is none. */
export const allOf = (words: Iterable<string>): string => AND.format(words);

/** "blush", "blush or cream", "blush, cream or white"; empty when there is none. */
export const anyOf = (words: Iterable<string>): string => OR.format(words);
