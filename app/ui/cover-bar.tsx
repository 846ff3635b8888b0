import { countOf } from "./numbers";

/** How much of a need is covered: a bar, hatched where stems are short, and always the words. */
export function CoverBar({ needStems, shortStems }: { needStems: number; shortStems: number }) {
  const share = needStems === 0 ? 1 : (needStems - shortStems) / needStems;
  return (
    <span className="row">
      <span className="coverbar" aria-hidden="true">
        <span style={{ width: `${Math.floor(share * 100)}%` }} />
      </span>
      {shortStems === 0 ? (
        <span className="good-word">covered</span>
      ) : (
        <span className="short-word">{countOf(shortStems, "stem")} short</span>
      )}
    </span>
  );
}
