"use client";

import { useContext } from "react";
import { isTakenBack, isWaiting, kindOf, type Unsent } from "#lib/domain/unsent";
import { saidInWords, unsentInWords } from "#lib/plan/words/field-words";
import { countOf } from "#lib/plan/words/numbers";
import { FarmRevision } from "../ui/farm-revision.client";
import { LiveFarm } from "./live-farm.client";
import { dropUnsent, isOnlyInThisPage } from "./unsent-store.client";
import { useContact, useUnsent } from "./use-field.client";

/** What this phone still has to send, on every page, and what the farm would not take; nothing when all is told. */
export function FieldBar() {
  const unsent = useUnsent();
  const revision = useContext(FarmRevision);
  const { state } = useContact();
  const waiting = unsent.filter((one) => isWaiting(one) && !isTakenBack(one, unsent));
  const refused = unsent.filter((one) => one.state === "refused");
  const isLost = state === "lost" && waiting.length === 0;
  return (
    <>
      <LiveFarm />
      <div role="status" className="field-bar no-print" data-revision={revision}>
        {isLost && <p className="notice">No signal: this page goes on, and what you count is kept on this phone.</p>}
        {waiting.length > 0 && (
          <div className="notice">
            <p>
              <b>{unsentInWords(waiting.map(({ tally }) => kindOf(tally)))}</b> {WHY[state]}
            </p>
            <Named unsent={waiting} />
          </div>
        )}
      </div>
      {refused.length > 0 && (
        <div role="alert" className="notice bad no-print">
          <p>The farm could not take {countOf(refused.length, "count")} from this phone:</p>
          <ul>
            {refused.map(({ tally, name, problems }) => (
              <li key={tally.key}>
                {name}, {saidInWords(kindOf(tally), tally.stemsCut)}: {problems.join("; ")}{" "}
                <button type="button" className="quiet" onClick={() => dropUnsent(tally.key)}>
                  Throw it away
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}

const WHY = {
  unknown: "",
  open: "They are going out now.",
  lost: "No signal: they go out by themselves when there is one.",
  "not let in": "This phone is not signed in any more: sign in or join again, and they go out.",
  refused: "The farm’s computer cannot take them just now; they are tried again.",
};

const Named = ({ unsent }: { unsent: readonly Unsent[] }) => (
  <details>
    <summary>Which</summary>
    <ul>
      {unsent.map(({ tally, name }) => (
        <li key={tally.key}>
          {name}: {saidInWords(kindOf(tally), tally.stemsCut)}
          {isOnlyInThisPage(tally.key) && ". This browser keeps nothing: leave the page open"}
        </li>
      ))}
    </ul>
  </details>
);
