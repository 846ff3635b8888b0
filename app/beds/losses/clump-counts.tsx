import type { Day } from "#lib/domain/day";
import type { ClumpsToCount } from "#lib/plan/winter/clumps-to-count";
import { countOf } from "#lib/plan/words/numbers";
import { ColourWord } from "../../ui/colour-words";
import { Form } from "../../ui/form.client";
import { noteLoss } from "./loss-actions";

type Props = { clumps: readonly ClumpsToCount[]; today: Day };

/** The spring count: how many clumps came through, planting by planting, each in two taps. Nothing where none is to be counted. */
export function ClumpCounts({ clumps, today }: Props) {
  if (clumps.length === 0) return null;
  return (
    <details className="fold">
      <summary>{countOf(clumps.length, "planting")} to count after the winter</summary>
      <p>
        How many clumps shoot, or came out of the store sound? The plan reckons with what you count in the ground, and
        Year’s end learns from both.
      </p>
      <ul className="plain">
        {clumps.map((one) => (
          <Line key={`${one.row.planting.id} ${one.cause}`} clumps={one} today={today} />
        ))}
      </ul>
    </details>
  );
}

function Line({ clumps: { row, cause }, today }: { clumps: ClumpsToCount; today: Day }) {
  const { bed, variety, crop, planting } = row;
  const name = `${crop.name} ${variety.name}`;
  const isStored = cause === "winter in store";
  return (
    <li className="bud-stop">
      <p>
        <b>{bed.name}</b> {name}, <ColourWord colour={variety.colour} />
        <small className="soft"> {isStored ? "out of the store, sound" : "in the ground, alive"}</small>
      </p>
      <Form
        action={noteLoss}
        hidden={{ bedId: bed.id, varietyId: variety.id, seenOn: today, cause }}
        label={`Clumps of ${name} in ${bed.name}`}
        beside={
          <>
            <label className="days-to-go">
              <span className="visually-hidden">Clumps that came through</span>
              <input name="plantsLeft" inputMode="numeric" size={4} autoComplete="off" />
              of
            </label>
            <label className="days-to-go">
              <span className="visually-hidden">Clumps there were</span>
              <input
                name="plantsBefore"
                inputMode="numeric"
                size={4}
                autoComplete="off"
                defaultValue={planting.plantCount}
              />
            </label>
            <button type="submit">
              Write it down<span className="visually-hidden">: {name}</span>
            </button>
          </>
        }
      />
    </li>
  );
}
