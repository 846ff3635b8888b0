import type { Day } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { WhatIf } from "#lib/domain/what-if";
import { adoption } from "#lib/plan/what-if/adoption";
import { adoptionInWords } from "#lib/plan/words/adoption-words";
import { countOf } from "#lib/plan/words/numbers";
import { winterOverInWords } from "#lib/plan/words/season-lead";
import { adoptInWords } from "#lib/plan/words/supposed-words";
import { Form } from "../../ui/form.client";
import { adopt } from "./adopt-action";
import { isOfWinterOver } from "./winter-over";

type Props = { whatIf: WhatIf; farm: Snapshot; revision: number; today: Day; isWorse: boolean };

/** The button that makes the farm so, the quieter where that is worse, and what it writes, in words under a fold. One change, and Undo takes it back. */
export function Adopt({ whatIf, farm, revision, today, isWorse }: Props) {
  const toWrite = adoption(farm, whatIf.seasonYear, whatIf.changes);
  const lines = adoptionInWords(toWrite, farm);
  const leftOut = toWrite.misfits.filter(({ misfit }) => !misfit.kind.endsWith("held")).length;
  if (whatIf.changes.length === 0) return null;
  if (lines.length === 0) return <p className="small">Nothing to adopt: the farm is already as it supposes.</p>;
  if (isOfWinterOver(toWrite, farm, whatIf.seasonYear, today))
    return <p className="notice">Not to be adopted: {winterOverInWords(whatIf.seasonYear)}.</p>;
  return (
    <div className="adopt-what-if no-print">
      <Form
        action={adopt}
        submit={adoptInWords(whatIf.changes)}
        hidden={{ whatIfId: whatIf.id, revision }}
        label={`Adopt ${whatIf.name}`}
        isQuiet={isWorse}
      />
      <details>
        <summary>
          It writes {countOf(lines.length, "thing")} to the farm
          {leftOut > 0 && `, without ${countOf(leftOut, "change")} that ${leftOut === 1 ? "does" : "do"} not fit`}
        </summary>
        <ul className="reasons">
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <p className="small">One change; Undo takes it back.</p>
      </details>
    </div>
  );
}
