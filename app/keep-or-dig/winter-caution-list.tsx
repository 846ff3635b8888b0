import type { WinterCaution } from "#lib/plan/words/winter-cautions";
import { OriginMark } from "../ui/origin-mark";

/** Cautions with where each comes from. */
export const WinterCautionList = ({ cautions }: { cautions: readonly WinterCaution[] }) => (
  <ul className="caution-list">
    {cautions.map(({ words, origin }) => (
      <li key={words}>
        {words} <OriginMark origin={origin} />
      </li>
    ))}
  </ul>
);
