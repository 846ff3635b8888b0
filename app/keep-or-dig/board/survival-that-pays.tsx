import { inPercent } from "#lib/plan/words/numbers";
import { breakEvenInWords } from "#lib/plan/words/worth-words";
import type { BedWorth } from "../../threads/jobs";
import type { BedRow } from "../planner-data";

const WIDTH = 70;
const LINE_AT = 9;

type Props = {
  readonly worth: BedWorth;
  readonly row: Pick<BedRow, "survivalShare" | "hasOwnSurvival">;
};

/** From none to all clumps living: the part of the line in which keeping pays, thick, and a mark at the survival that is reckoned with. */
export function SurvivalThatPays({ worth, row: { survivalShare, hasOwnSurvival } }: Props) {
  const isKeepingCheaper = worth.isKept === worth.worthCents >= 0;
  const from = worth.breakEvenShare ?? (isKeepingCheaper ? 0 : 1);
  const at = survivalShare * WIDTH;
  return (
    <span className="survival-pays">
      <svg viewBox={`0 0 ${WIDTH} 13`} width={WIDTH} height={13} aria-hidden="true">
        <path className="survival-line" d={`M0 ${LINE_AT}H${WIDTH}`} />
        <path className="pays" d={`M${from * WIDTH} ${LINE_AT}H${WIDTH}`} />
        <path className="reckoned" d={`M${at - 4} 0h8l-4 6zM${at} 4V13`} />
      </svg>
      <span className="small">
        {breakEvenInWords(worth)}
        {hasOwnSurvival && <span className="soft own-survival"> (its own: {inPercent(survivalShare)})</span>}
      </span>
    </span>
  );
}
