import { type Day, inShort } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { LOSS, type Loss, type LossCause } from "#lib/domain/records/loss";
import type { Snapshot } from "#lib/domain/snapshot";
import { alivePlants, type Grown } from "#lib/plan/road/grown";
import { countedShare, shareLeft } from "#lib/plan/road/plants-seen";
import { lossInWords } from "#lib/plan/words/loss-words";
import { Form } from "../../ui/form.client";
import { RecordField } from "../../ui/record-field";
import { noteLoss, takeBackLoss } from "./loss-actions";
import { NONE_LEFT } from "./loss-values";

type Props = { row: Grown; snapshot: Snapshot; today: Day };

/** What is left of a planting: what was written down of it, and a fold to write down more, all lost in two taps. */
export function PlantsLost({ row, snapshot, today }: Props) {
  const { planting, bed, variety, crop } = row;
  const losses = snapshot.losses.filter(
    ({ bedId, varietyId, seenOn }) =>
      bedId === bed.id && varietyId === variety.id && seenOn.startsWith(String(planting.seasonYear)),
  );
  const last = losses.toSorted((a, b) => (a.seenOn < b.seenOn ? -1 : 1)).at(-1);
  const isCounted = losses.some(({ cause }) => cause === "winter in the ground");
  const cause: LossCause = planting.treatment === "kept-in-ground" && !isCounted ? "winter in the ground" : "voles";
  return (
    <details className="fold">
      <summary>
        Plants lost{planting.treatment === "kept-in-ground" || crop.overwinters ? ", or come through the winter" : ""}
        {last && (
          <>
            {" "}
            <small>{lossInWords(last)}</small>
          </>
        )}
      </summary>
      {losses.map((loss) => (
        <LossLine key={loss.id} loss={loss} />
      ))}
      <LossForm
        key={losses.map(({ id }) => id).join()}
        row={row}
        farm={snapshot.farm}
        given={{ seenOn: today, cause, plantsBefore: plantsBefore(row, snapshot.farm, cause) }}
      />
    </details>
  );
}

/** Of a winter all that were left in; else what is reckoned to stand. */
function plantsBefore({ planting, seen }: Grown, farm: Farm, cause: LossCause): number {
  if (cause === "winter in the ground") return Math.max(1, planting.plantCount);
  const stands = alivePlants(planting, farm, countedShare(seen)) * shareLeft(seen.losses, Number.POSITIVE_INFINITY);
  return Math.max(1, Math.round(stands));
}

const LossLine = ({ loss }: { loss: Loss }) => (
  <div className="row">
    <span>
      {inShort(loss.seenOn)}: {lossInWords(loss)}
    </span>
    <Form
      action={takeBackLoss}
      submit="Take back"
      hidden={{ lossId: loss.id }}
      label={`Take back: ${lossInWords(loss)}`}
      isQuiet
    />
  </div>
);

type FormProps = { row: Grown; farm: Farm; given: Pick<Loss, "seenOn" | "cause" | "plantsBefore"> };

function LossForm({ row: { bed, variety, crop }, farm, given }: FormProps) {
  const { seenOn, cause, plantsBefore: before, plantsLeft } = formFields(LOSS, given, farm);
  return (
    <Form
      action={noteLoss}
      submit="Write it down"
      hidden={{ bedId: bed.id, varietyId: variety.id }}
      label={`What is left of ${crop.name} ${variety.name} in ${bed.name}`}
      isQuiet
      beside={
        <button type="submit" name={NONE_LEFT} value="yes">
          All are lost
        </button>
      }
    >
      <div className="fields">
        <RecordField {...cause} />
        <RecordField {...before} />
        <RecordField {...plantsLeft} />
        <RecordField {...seenOn} />
      </div>
    </Form>
  );
}
