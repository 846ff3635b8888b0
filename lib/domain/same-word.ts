import { nameKey } from "./nearest-name";

/**
 * Words as they are compared when a grower may write them her way: letter case, hyphens, commas and possessives aside, one and several
 * alike ("Bridesmaids’ bouquets" is "bridesmaid bouquet"), and each word in the spelling of `others` where it has one there.
 */
export function sameWord(text: string, others: Readonly<Record<string, string>> = {}): string {
  const words = nameKey(text)
    .replace(/['’]s?\b|['’]/g, "")
    .replace(/[\s_,.()-]+/g, " ")
    .trim()
    .split(" ")
    .map(singular);
  const spelled = words.map((word) => others[word] ?? word).join(" ");
  return Object.entries(others).reduce(
    (sentence, [from, to]) => (from.includes(" ") ? ` ${sentence} `.replace(` ${from} `, ` ${to} `).trim() : sentence),
    spelled,
  );
}

/** One of what may be several. It need be no word, as long as one and several give the same. */
const singular = (word: string): string => {
  if (word.length < 4 || /(ss|us)$/.test(word)) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  if (/(ch|sh|ss|x|z)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith("s") ? word.slice(0, -1) : word;
};
