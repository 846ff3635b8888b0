import { inRoundMoney, inWholes } from "#lib/plan/words/numbers";

/** Which way a number is better for the grower, and the words for less and for more of it. */
export type Sense = {
  readonly better: "less" | "more";
  readonly words: readonly [less: string, more: string];
  readonly isMoney?: boolean;
};

export const SHORT: Sense = { better: "less", words: ["better", "worse"] };
export const COST: Sense = { better: "less", words: ["cheaper", "dearer"], isMoney: true };
export const COVERED: Sense = { better: "more", words: ["worse", "better"] };

/** "−40", "+$120", a middle dot for the same: the difference from the farm as it stands; whether that is better is in its colour and, for readers, in a word. */
export function Difference({ difference, sense }: { difference: number; sense: Sense }) {
  const isSame = sense.isMoney ? Math.round(difference / 100) === 0 : difference === 0;
  if (isSame)
    return (
      <span className="soft">
        <span aria-hidden="true">·</span>
        <span className="visually-hidden">the same</span>
      </span>
    );
  const size = sense.isMoney ? inRoundMoney(Math.abs(difference)) : inWholes(Math.abs(difference));
  const isBetter = difference < 0 === (sense.better === "less");
  return (
    <span className={isBetter ? "unbroken good-word" : "unbroken short-word"}>
      {difference < 0 ? "−" : "+"}
      {size}
      <span className="visually-hidden"> {sense.words[difference < 0 ? 0 : 1]}</span>
    </span>
  );
}
