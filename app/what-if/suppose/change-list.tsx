import type { Snapshot } from "#lib/domain/snapshot";
import type { WhatIf } from "#lib/domain/what-if";
import type { ChangeMisfit } from "#lib/plan/what-if/what-if";
import { misfitInWords } from "#lib/plan/words/misfit-words";
import { changeInWords } from "#lib/plan/words/what-if-words";
import { Form } from "../../ui/form.client";
import { takeChangeOut } from "./change-actions";

type Props = { whatIf: WhatIf; farm: Snapshot; misfits: readonly ChangeMisfit[] };

/** What is supposed, in order, each with what does not fit and a button to take it out. */
export function ChangeList({ whatIf, farm, misfits }: Props) {
  if (whatIf.changes.length === 0)
    return <p className="soft">Nothing yet: the season is as it stands. Choose below what to suppose.</p>;
  return (
    <ol className="change-list">
      {whatIf.changes.map((change, index) => {
        const words = changeInWords(change, farm);
        const unfit = misfits.find(({ changeIndex }) => changeIndex === index);
        return (
          <li key={JSON.stringify([index, change])}>
            <div>
              <span>{words}</span>
              <Form
                action={takeChangeOut}
                submit="Take out"
                hidden={{ whatIfId: whatIf.id, index, shown: JSON.stringify(change) }}
                label={`Take out: ${words}`}
                isQuiet
              />
            </div>
            {unfit && <p className="problem">{misfitInWords(unfit.misfit)}</p>}
          </li>
        );
      })}
    </ol>
  );
}
