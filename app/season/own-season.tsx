import { formFields } from "#lib/domain/records/form";
import { type Planting, SEASON_ALONE } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import { plantingsOfCrop } from "#lib/plan/road/grown";
import { countOf } from "#lib/plan/words/numbers";
import { ownSeasonInWords } from "#lib/plan/words/own-season-words";
import { Form } from "../ui/form.client";
import { SelectField } from "../ui/form-fields.client";
import { RecordField } from "../ui/record-field";
import { saySeason } from "./own-season-actions";

/** What the grower says of this season alone, crop by crop, and the form to say it. It stands above what cuts and buds have shown, and no curve is touched. */
export function OwnSeason({ snapshot, seasonYear }: { readonly snapshot: Snapshot; readonly seasonYear: number }) {
  const crops = snapshot.crops
    .map((crop) => ({ crop, plantings: plantingsOfCrop(snapshot, seasonYear, crop.id) }))
    .filter(({ plantings }) => plantings.length > 0);
  const said = crops.flatMap(({ crop, plantings }) => saidOf(plantings).map((one) => ({ crop, ...one })));
  const { daysLate, yieldFactor } = formFields(SEASON_ALONE, undefined, snapshot.farm);
  const every = { value: "", label: "every crop" };
  return (
    <details className="fold" open={said.length > 0}>
      <summary>
        This season only, by your own word
        {said.length > 0 && <small> {countOf(said.length, "entry", "entries")}</small>}
      </summary>
      {said.length > 0 && (
        <ul className="plain">
          {said.map(({ crop, words, count }) => (
            <li key={`${crop.id} ${words}`} className="row apart">
              <span>
                <b>{crop.name}</b>: {words} <small>in {countOf(count, "planting")}</small>
              </span>
              <Form
                action={saySeason}
                hidden={{ seasonYear, cropId: crop.id, daysLate: "", yieldFactor: "" }}
                submit="Take back"
                label={`What is said of ${crop.name}`}
                isQuiet
              />
            </li>
          ))}
        </ul>
      )}
      <Form action={saySeason} hidden={{ seasonYear }} submit="Say it" label="A crop early or late, this season only">
        <div className="fields">
          <SelectField
            name="cropId"
            label="Crop"
            options={[every, ...crops.map(({ crop }) => ({ value: String(crop.id), label: crop.name }))]}
          />
          <RecordField {...daysLate} />
          <RecordField {...yieldFactor} />
        </div>
      </Form>
    </details>
  );
}

/** What is said of plantings, those of which the same is said together. */
function saidOf(plantings: readonly Planting[]): { readonly words: string; readonly count: number }[] {
  const counts = new Map<string, number>();
  for (const planting of plantings) {
    const words = ownSeasonInWords(planting);
    if (words !== null) counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  return [...counts].map(([words, count]) => ({ words, count }));
}
