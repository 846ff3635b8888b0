import type { Snapshot } from "#lib/domain/snapshot";
import type { WhatIf } from "#lib/domain/what-if";
import { adoption } from "#lib/plan/what-if/adoption";
import { adoptionInWords } from "#lib/plan/words/adoption-words";
import { countOf } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { adopt } from "./adopt-action";

type Props = { whatIf: WhatIf; farm: Snapshot; revision: number; isAsked: boolean };

/** What adopting would write, in words; the button that writes it comes only when it was asked for. */
export function Adopt({ whatIf, farm, revision, isAsked }: Props) {
  const toWrite = adoption(farm, whatIf.seasonYear, whatIf.changes);
  const lines = adoptionInWords(toWrite, farm);
  const leftOut = toWrite.misfits.filter(({ misfit }) => !misfit.kind.endsWith("held")).length;
  return (
    <section aria-labelledby="adopt">
      <h2 id="adopt">Adopt</h2>
      {lines.length === 0 ? (
        <p className="soft">There is nothing to adopt: the farm is already as this what-if supposes.</p>
      ) : (
        <>
          <p>
            Adopting would write {countOf(lines.length, "thing")} to the farm
            {leftOut > 0 && `, without the ${countOf(leftOut, "change")} that ${leftOut === 1 ? "does" : "do"} not fit`}
            :
          </p>
          <ul className="reasons">
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          {isAsked ? (
            <div className="notice">
              <p>
                <strong>Write all of this to the farm?</strong> It is one change, and Undo at the top of the next page
                takes it back.
              </p>
              <Form
                action={adopt}
                submit="Yes, adopt it"
                hidden={{ whatIfId: whatIf.id, revision }}
                label={`Adopt ${whatIf.name}`}
                beside={
                  <a className="button" href={`/what-if/${whatIf.id}#adopt`}>
                    Not now
                  </a>
                }
              />
            </div>
          ) : (
            <p className="actions">
              <a className="button main" href={`/what-if/${whatIf.id}?adopt=asked#adopt`}>
                Adopt this what-if…
              </a>
            </p>
          )}
        </>
      )}
    </section>
  );
}
