import { isWrongWay, savingInWords } from "#lib/plan/words/worth-words";
import type { BedWorth } from "../../threads/jobs";

const HALF = 30;
const HEIGHT = 12;

type Props = {
  readonly worth: BedWorth;
  /** The most that any bed's fate is worth, in cents; its bar is the longest. */
  readonly mostCents: number;
};

/** What a bed's fate saves: a bar to the right where keeping is cheaper, to the left where digging is, full where it is ticked so; and the words. */
export function SavingCell({ worth, mostCents }: Props) {
  const { isKept, worthCents } = worth;
  const keepingSavesCents = isKept ? worthCents : -worthCents;
  const length = (HALF * Math.abs(keepingSavesCents)) / Math.max(1, mostCents);
  return (
    <span className="saving">
      <svg viewBox={`0 0 ${2 * HALF} ${HEIGHT}`} width={2 * HALF} height={HEIGHT} aria-hidden="true">
        <rect
          className={isWrongWay(worth) ? "would-save" : "saves"}
          x={keepingSavesCents < 0 ? HALF - length : HALF}
          y={2}
          width={length}
          height={HEIGHT - 4}
        />
        <path className="bloom-soil" d={`M${HALF} 0V${HEIGHT}`} />
      </svg>
      <span className={isWrongWay(worth) ? "good-word" : undefined}>{savingInWords(worth)}</span>
    </span>
  );
}
