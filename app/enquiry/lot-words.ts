import { countOf, inWholes } from "#lib/plan/words/numbers";
import type { NamedLot } from "./answer/answer-view";

const LOTS_NAMED = 3;

/** "26 Peony Heron Blush, Orchard 1; 7 Garden rose Vesper Pink, Orchard 4", and how many lots more. */
export function lotsInWords(lots: readonly NamedLot[]): string {
  const named = lots.slice(0, LOTS_NAMED).map(({ stems, name, place }) => `${inWholes(stems)} ${name}, ${place}`);
  const rest = lots.length - named.length;
  return named.join("; ") + (rest > 0 ? ` and ${countOf(rest, "more lot")}` : "");
}
