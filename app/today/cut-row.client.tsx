"use client";

import { type FormEvent, startTransition, useActionState, useContext, useId, useState } from "react";
import type { PlannedSpray } from "#lib/domain/list-age";
import { counted, isOnlyHere, type SentTally, type Unsent } from "#lib/domain/unsent";
import { countOf } from "#lib/plan/words/numbers";
import { useClosedBed } from "../field/field-list.client";
import { momentNow } from "../field/phone-clock.client";
import { sendUnsent } from "../field/send-unsent.client";
import { dropUnsent, keepUnsent } from "../field/unsent-store.client";
import { useUnsentOf } from "../field/use-field.client";
import { CountInput, countIn } from "../ui/count-input.client";
import { FarmRevision } from "../ui/farm-revision.client";
import { FieldProblem } from "../ui/field-problem";
import { FRESH } from "../ui/form-state";
import { newKey } from "../ui/sending";
import { saveCut } from "./today-actions";

type Row = Pick<SentTally, "cutOn" | "bedId" | "varietyId" | "asked" | "seenStems"> & {
  /** What the row is called: its bed, crop and variety. */
  readonly name: string;
  readonly stemsToCut: number;
  /** What becomes of it where it is left: when it is cut then, or null where it cannot be; and what is to be said of that. */
  readonly waits: { readonly when: string | null; readonly told: string | null };
};
type Props = Row & { readonly spray: PlannedSpray };

const NO_COUNT = "write a whole number of stems, such as 12";

/** One tap where it came as asked; fewer, more or none otherwise. What is counted is kept on the phone and sent when there is a line. */
export function CutRow({ spray, ...row }: Props) {
  const unsent = useUnsentOf(row);
  const closed = useClosedBed(row.bedId, spray);
  if (unsent.length > 0) return <CountedHere unsent={unsent} name={row.name} />;
  if (closed === null) return <Count {...row} />;
  return (
    <>
      <p className="short-word">{closed.why}</p>
      {closed.open && (
        <button type="button" className="quiet" onClick={closed.open}>
          It was not sprayed<span className="visually-hidden">: {row.name}</span>
        </button>
      )}
    </>
  );
}

/** What was counted here, until the list shows it. */
function CountedHere({ unsent, name }: { readonly unsent: readonly Unsent[]; readonly name: string }) {
  return (
    <div className="counted-here" role="status">
      {unsent.map((one) => (
        <p key={one.tally.key}>
          <span>
            {countedInWords(one.tally)}
            {one.state === "taken" ? (
              <b className="good-word"> ✓ saved</b>
            ) : (
              <b className="short-word"> · not sent yet</b>
            )}
          </span>
          {isOnlyHere(one) && (
            <button type="button" className="quiet" onClick={() => dropUnsent(one.tally.key)}>
              Take back<span className="visually-hidden">: {name}</span>
            </button>
          )}
        </p>
      ))}
    </div>
  );
}

const countedInWords = ({ stemsCut, restStands }: SentTally): string =>
  `${stemsCut === 0 ? (restStands ? "Left to stand" : "None left") : `${countOf(stemsCut, "stem")} counted${restStands ? ", the rest left" : ""}`}`;

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
    keepUnsent(
      counted(
        {
          ...row,
          stemsCut,
          ...(restStands ? { restStands } : {}),
          seenRevision,
          key: newKey(),
          countedAt: momentNow(),
        },
        name,
      ),
    );
    startTransition(() => void sendUnsent());
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
            {cutOfLeft ? `Save ${cutOfLeft}, rest ${waits.when.toLowerCase()}` : waits.when}
          </button>
        )}
      </div>
      {waits.told && <p className="note">{waits.told}</p>}
      <FieldProblem id={`${id}-problem`} message={problem} />
    </form>
  );
}
