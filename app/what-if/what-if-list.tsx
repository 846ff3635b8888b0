import type { Snapshot } from "#lib/domain/snapshot";
import type { WhatIf } from "#lib/domain/what-if";
import { changeInWords } from "#lib/plan/words/what-if-words";
import { COMPARED_AT_MOST } from "./compare-query";
import { RenameRemove } from "./rename-remove";

const CHANGES_SHOWN = 5;

type Props = { whatIfs: readonly WhatIf[]; compared: readonly WhatIf[]; farm: Snapshot };

/** Each what-if with its changes in words, and a tick to set it beside the farm as it stands. */
export function WhatIfList({ whatIfs, compared, farm }: Props) {
  return (
    <>
      <h2>Kept so far</h2>
      <ul className="cards">
        {whatIfs.map((whatIf) => (
          <li className="card supposing" key={whatIf.id}>
            <h3>
              <a href={`/what-if/${whatIf.id}`}>{whatIf.name}</a>
            </h3>
            <ChangesShown whatIf={whatIf} farm={farm} />
            <label className="check">
              <input
                type="checkbox"
                name="with"
                value={whatIf.id}
                form="compare"
                defaultChecked={compared.some(({ id }) => id === whatIf.id)}
              />
              <span>
                compare<span className="visually-hidden"> {whatIf.name}</span>
              </span>
            </label>
            <RenameRemove whatIf={whatIf} />
          </li>
        ))}
      </ul>
      <form id="compare" method="get" action="/what-if#compared" className="actions">
        <button type="submit" className="main">
          Compare the ticked ones
        </button>
        <span className="soft">
          Up to {COMPARED_AT_MOST} of them, beside the farm as it stands.
          {compared.length > 0 && (
            <>
              {" "}
              <a href="/what-if">Compare none</a>
            </>
          )}
        </span>
      </form>
    </>
  );
}

function ChangesShown({ whatIf, farm }: { whatIf: WhatIf; farm: Snapshot }) {
  const { changes } = whatIf;
  if (changes.length === 0)
    return (
      <p className="soft">
        No changes yet. <a href={`/what-if/${whatIf.id}#add`}>Add the first</a>
      </p>
    );
  return (
    <>
      <ol className="reasons">
        {changes.slice(0, CHANGES_SHOWN).map((change, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a change is named by its place
          <li key={index}>{changeInWords(change, farm)}</li>
        ))}
      </ol>
      {changes.length > CHANGES_SHOWN && (
        <p className="soft small">and {changes.length - CHANGES_SHOWN} more changes</p>
      )}
    </>
  );
}
