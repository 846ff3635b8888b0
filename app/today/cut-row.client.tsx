"use client";

import { type FormEvent, useActionState, useContext, useId, useState } from "react";
import type { PlannedSpray } from "#lib/domain/list-age";
import { isOnlyHere, type SentTally, type Unsent } from "#lib/domain/unsent";
import { countOf } from "#lib/plan/words/numbers";
import { say } from "../field/say.client";
import { UnlessClosed } from "../field/unless-closed.client";
import { dropUnsent } from "../field/unsent-store.client";
import { useCountsOf } from "../field/use-field.client";
import { CountInput, countIn } from "../ui/count-input.client";
import { FarmRevision } from "../ui/farm-revision.client";
import { FieldProblem } from "../ui/field-problem";
import { FRESH } from "../ui/form-state";
import { NO_COUNT } from "./no-count";
import { saveCut } from "./today-actions";

type Row = Pick<SentTally, "cutOn" | "bedId" | "varietyId" | "asked" | "seenStems"> & {
  /** What the row is called: its bed, crop and variety. */
  readonly name: string;
  readonly stemsToCut: number;
  /** What becomes of it where it is left: when it is cut then, or null where it cannot be; and what is to be said of that. */
  readonly waits: { readonly when: string | null; readonly told: string | null };
};
type Props = Row & { readonly spray: PlannedSpray };

/** One tap where it came as asked; fewer, more or none otherwise. What is counted is kept on the phone and sent when there is a line. */
export function CutRow({ spray, ...row }: Props) {
  const counts = useCountsOf(row);
  if (counts.length > 0) return <CountedHere counts={counts} name={row.name} />;
  return (
    <UnlessClosed bedId={row.bedId} name={row.name} spray={spray} cutOn={row.cutOn}>
      <Count {...row} />
    </UnlessClosed>
  );
}

/** What was counted here, until the list shows it. */
function CountedHere({ counts, name }: { readonly counts: readonly Unsent[]; readonly name: string }) {
  return (
    <div className="counted-here" role="status">
      {counts.map((one) => (
        <p key={one.tally.key}>
          <span>
            {countedInWords(one.tally)}
            {one.state === "taken" ? (
              <b className="good-word"> ✓ saved</b>
            ) : (
              <b className="short-word"> · not sent yet</b>
            )}
          </span>
          <button type="button" className="quiet" onClick={() => takeBack(one)}>
            Take back<span className="visually-hidden">: {name}</span>
          </button>
        </p>
      ))}
    </div>
  );
}

const countedInWords = ({ stemsCut, restStands }: SentTally): string =>
  `${stemsCut === 0 ? (restStands ? "Left to stand" : "None left") : `${countOf(stemsCut, "stem")} counted${restStands ? ", the rest left" : ""}`}`;

/** Drops a count that never left this phone; one that the farm may have is taken back there too, when there is a line. */
function takeBack(one: Unsent): void {
  const { tally: of, name } = one;
  if (isOnlyHere(one)) dropUnsent(of.key);
  else say({ ...of, kind: "taken back", of, stemsCut: 0, asked: [] }, name);
}

function Count({ name, stemsToCut, waits, ...row }: Row) {
  const seenRevision = useContext(FarmRevision) ?? 0;
  // Without scripts the browser sends the form itself, and this is the answer.
  const [posted, dispatch] = useActionState(saveCut, FRESH);
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | undefined>(posted.problems[0]?.message);
  const id = useId();
  const shown = typed ?? String(stemsToCut);
  const count = countIn(shown);
  // A number that nobody touched is the list's: then all of the row waits.
  const cutOfLeft = typed === null ? 0 : count;
  const keep = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    const pressed = submitter?.getAttribute("name");
    const restStands = pressed === "rest";
    const stemsCut = pressed === "none" ? 0 : restStands ? cutOfLeft : count;
    setProblem(stemsCut === null ? NO_COUNT : undefined);
    if (stemsCut === null) return document.getElementById(id)?.focus();
    say({ ...row, stemsCut, ...(restStands ? { restStands } : {}), seenRevision }, name);
  };
  const hidden = { ...row, asked: JSON.stringify(row.asked), seenRevision, listed: stemsToCut };
  return (
    <form action={dispatch} onSubmit={keep} noValidate aria-label={`Record ${name}`}>
      {Object.entries(hidden).map(([field, value]) => (
        <input key={field} type="hidden" name={field} value={value} />
      ))}
      <div className="cut-controls">
        <CountInput
          what={name}
          onStep={(by) => setTyped(String(Math.max(0, (count ?? stemsToCut) + by)))}
          id={id}
          name="stemsCut"
          inputMode="numeric"
          aria-label={`Stems cut: ${name}`}
          aria-invalid={problem ? true : undefined}
          aria-describedby={`${id}-problem`}
          value={shown}
          onChange={({ target }) => setTyped(target.value)}
        />
        <button type="submit" className="main">
          {count === null ? "Save" : `Save ${count}`}
        </button>
        <button type="submit" name="none" value="yes">
          None left
        </button>
        {waits.when && (cutOfLeft === null || cutOfLeft < stemsToCut) && (
          <button type="submit" name="rest" value="yes">
            {cutOfLeft ? `Save ${cutOfLeft}, rest ${waits.when[0].toLowerCase()}${waits.when.slice(1)}` : waits.when}
          </button>
        )}
      </div>
      {waits.told && <p className="note">{waits.told}</p>}
      <FieldProblem id={`${id}-problem`} message={problem} />
    </form>
  );
}
