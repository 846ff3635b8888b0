"use client";

import { type FormEvent, useActionState, useContext, useId, useState } from "react";
import { isOnlyHere, kindOf, type SentTally, type Unsent } from "#lib/domain/unsent";
import { saidInWords } from "#lib/plan/words/field-words";
import { say } from "../field/say.client";
import { dropUnsent } from "../field/unsent-store.client";
import { useChangesOf } from "../field/use-field.client";
import { CountInput, countIn } from "../ui/count-input.client";
import { FarmRevision } from "../ui/farm-revision.client";
import { FieldProblem } from "../ui/field-problem";
import { FRESH } from "../ui/form-state";
import { NO_COUNT } from "./no-count";
import { correctCut, takeBackCut } from "./today-actions";

type Props = Pick<SentTally, "cutOn" | "bedId" | "varietyId"> & {
  /** As recorded. */
  readonly stemsCut: number;
  readonly cutIds: readonly number[];
  /** What the row is called: its bed, crop and variety. */
  readonly name: string;
};

/** The correction of a recorded row and its way back. Both are kept on the phone and sent when there is a line, as counts are. */
export function DoneRow(row: Props) {
  const changes = useChangesOf(row);
  return changes.length > 0 ? (
    <SaidHere said={changes} name={row.name} />
  ) : (
    <span className="row">
      <Correct {...row} />
      <TakeBack {...row} />
    </span>
  );
}

/** What was said here, until the list shows it. */
const SaidHere = ({ said, name }: { readonly said: readonly Unsent[]; readonly name: string }) => (
  <span className="row" role="status">
    {said.map((one) => (
      <span key={one.tally.key}>
        {saidInWords(kindOf(one.tally), one.tally.stemsCut)}
        {one.state === "taken" ? <b className="good-word"> ✓ saved</b> : <b className="short-word"> · not sent yet</b>}{" "}
        {isOnlyHere(one) && (
          <button type="button" className="quiet" onClick={() => dropUnsent(one.tally.key)}>
            Leave it as it was<span className="visually-hidden">: {name}</span>
          </button>
        )}
      </span>
    ))}
  </span>
);

/** Says something of the record as this page shows it. */
function useSay({ cutOn, bedId, varietyId, stemsCut: seenStems, name }: Props) {
  const seenRevision = useContext(FarmRevision) ?? 0;
  return (kind: "corrected" | "taken back", stemsCut: number) =>
    say({ cutOn, bedId, varietyId, asked: [], stemsCut, seenStems, seenRevision, kind }, name);
}

function Correct(row: Props) {
  const { cutOn, bedId, varietyId, name } = row;
  // Without scripts the browser sends the form itself, and this is the answer.
  const [posted, dispatch] = useActionState(correctCut, FRESH);
  const [typed, setTyped] = useState(String(row.stemsCut));
  const [problem, setProblem] = useState<string | undefined>(posted.problems[0]?.message);
  const correct = useSay(row);
  const id = useId();
  const count = countIn(typed);
  const keep = (event: FormEvent) => {
    event.preventDefault();
    setProblem(count === null ? NO_COUNT : undefined);
    if (count === null) document.getElementById(id)?.focus();
    else correct("corrected", count);
  };
  return (
    <details className="correct-row">
      <summary>
        Correct<span className="visually-hidden"> {name}</span>
      </summary>
      <form action={dispatch} onSubmit={keep} noValidate aria-label={`Correct ${name}`}>
        <Hidden of={{ cutOn, bedId, varietyId }} />
        <label htmlFor={id}>Stems cut in all</label>
        <CountInput
          what={name}
          onStep={(by) => setTyped(String(Math.max(0, (count ?? row.stemsCut) + by)))}
          id={id}
          name="stemsCut"
          inputMode="numeric"
          aria-invalid={problem ? true : undefined}
          aria-describedby={`${id}-problem`}
          value={typed}
          onChange={({ target }) => setTyped(target.value)}
        />
        <button type="submit" className="quiet">
          Correct
        </button>
        <FieldProblem id={`${id}-problem`} message={problem} />
      </form>
    </details>
  );
}

function TakeBack(row: Props) {
  const [posted, dispatch] = useActionState(takeBackCut, FRESH);
  const takeBack = useSay(row);
  const keep = (event: FormEvent) => {
    event.preventDefault();
    takeBack("taken back", 0);
  };
  return (
    <form action={dispatch} onSubmit={keep} aria-label={`Take back the record of ${row.name}`}>
      <Hidden of={{ ids: JSON.stringify(row.cutIds) }} />
      <button type="submit" className="quiet">
        Take back
      </button>
      <FieldProblem id={`taken-back-${row.cutIds[0]}`} message={posted.problems[0]?.message} />
    </form>
  );
}

const Hidden = ({ of }: { readonly of: Readonly<Record<string, string | number>> }) =>
  Object.entries(of).map(([field, value]) => <input key={field} type="hidden" name={field} value={value} />);
