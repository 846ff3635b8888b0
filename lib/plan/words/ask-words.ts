import { allOf, anyOf } from "#lib/domain/listed";
import { HEAD_SIZES, type StemAsk } from "#lib/domain/words";

/** What is asked of a stem: "a small or medium head, and to hold out of water"; empty where nothing is. */
export function asksInWords(asks: readonly StemAsk[]): string {
  const heads = HEAD_SIZES.filter((size) => asks.includes(`${size} head`));
  return allOf([
    ...(heads.length ? [`a ${anyOf(heads)} head`] : []),
    ...(asks.includes("long stem") ? ["a long stem"] : []),
    ...(asks.includes("out of water") ? ["a hold out of water"] : []),
  ]);
}

/** The same after what it is asked of: ", with a long stem"; empty where nothing is. */
export const withAsks = (asks: readonly StemAsk[]): string => (asks.length === 0 ? "" : `, with ${asksInWords(asks)}`);
