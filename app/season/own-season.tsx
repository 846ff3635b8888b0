import type { Crop } from "#lib/domain/records/crop";
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

/** Entries that stand open; the rest are folded. */
const SAID_FIRST = 6;

type Planted = { readonly crop: Crop; readonly plantings: readonly Planting[] };
/** `cropId` as the form sends it: empty for every crop. */
type Said = { readonly cropId: string; readonly name: string; readonly words: string; readonly count: number };

/** What the grower says of this season alone, crop by crop, and the form to say it. It stands above what cuts and buds have shown, and no curve is touched. */
export function OwnSeason({ snapshot, seasonYear }: { readonly snapshot: Snapshot; readonly seasonYear: number }) {
  const crops = snapshot.crops
    .map((crop) => ({ crop, plantings: plantingsOfCrop(snapshot, seasonYear, crop.id) }))
    .filter(({ plantings }) => plantings.length > 0);
  const said = saidOf(crops);
  const [first, rest] = [said.slice(0, SAID_FIRST), said.slice(SAID_FIRST)];
  const { daysLate, yieldFactor } = formFields(SEASON_ALONE, undefined, snapshot.farm);
  const every = { value: "", label: "every crop" };
  return (
    <details className="fold" open={said.length > 0}>
      <summary>
        This season only, by your own word
        {said.length > 0 && <small> {countOf(said.length, "entry", "entries")}</small>}
      </summary>
      {first.length > 0 && <SaidLines said={first} seasonYear={seasonYear} />}
      {rest.length > 0 && (
        <details>
          <summary>{countOf(rest.length, "more entry", "more entries")}</summary>
          <SaidLines said={rest} seasonYear={seasonYear} />
        </details>
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

const SaidLines = ({ said, seasonYear }: { readonly said: readonly Said[]; readonly seasonYear: number }) => (
  <ul className="plain">
    {said.map(({ cropId, name, words, count }) => (
      <li key={`${cropId} ${words}`} className="row apart">
        <span>
          <b>{name}</b>: {words} <small>in {countOf(count, "planting")}</small>
        </span>
        <Form
          action={saySeason}
          hidden={{ seasonYear, cropId, daysLate: "", yieldFactor: "" }}
          submit="Take back"
          label={`What is said of ${name}`}
          isQuiet
        />
      </li>
    ))}
  </ul>
);

/** What is said, crop by crop, plantings of which the same is said together; one entry where the same is said of all. */
function saidOf(crops: readonly Planted[]): readonly Said[] {
  const said = crops.flatMap(({ crop: { id, name }, plantings }) => {
    const counts = new Map<string, number>();
    for (const planting of plantings) {
      const words = ownSeasonInWords(planting);
      if (words !== null) counts.set(words, (counts.get(words) ?? 0) + 1);
    }
    return [...counts].map(([words, count]) => ({ cropId: String(id), name, words, count }));
  });
  const plantingCount = crops.reduce((sum, { plantings }) => sum + plantings.length, 0);
  const saidCount = said.reduce((sum, { count }) => sum + count, 0);
  const isOfAll = said.length > 1 && saidCount === plantingCount && said.every(({ words }) => words === said[0].words);
  return isOfAll ? [{ cropId: "", name: "Every crop", words: said[0].words, count: saidCount }] : said;
}
