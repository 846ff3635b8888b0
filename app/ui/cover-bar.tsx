import { countOf } from "#lib/plan/words/numbers";
import { Bar } from "./bar";

/** How much of a need is covered: a bar, hatched where stems are short, and always the words. */
export function CoverBar({ needStems, shortStems }: { needStems: number; shortStems: number }) {
  const share = needStems === 0 ? 1 : (needStems - shortStems) / needStems;
  return (
    <span className="row">
      <Bar className="coverbar" to={share} />
      {shortStems === 0 ? (
        <span className="good-word">covered</span>
      ) : (
        <span className="short-word">{countOf(shortStems, "stem")} short</span>
      )}
    </span>
  );
}
