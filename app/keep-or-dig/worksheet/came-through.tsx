import type { Snapshot } from "#lib/domain/snapshot";
import type { WinterBed } from "#lib/plan/winter/beds";
import { countOf, inPercent } from "#lib/plan/words/numbers";
import { ColourWord } from "../../ui/colour-words";
import { Form } from "../../ui/form.client";
import { NumberField } from "../../ui/form-fields.client";
import { recordCount } from "./count-action";

type Props = { beds: readonly WinterBed[]; snapshot: Snapshot; seasonYear: number };

/** What came through: live clumps counted in spring become the planting's own survival, in place of what was assumed. */
export function CameThrough({ beds, snapshot, seasonYear }: Props) {
  const plantings = new Map(snapshot.plantings.map((planting) => [planting.id, planting]));
  return (
    <section aria-labelledby="came-through" className="no-print">
      <h2 id="came-through">What came through</h2>
      {beds.length === 0 ? (
        <p>
          No bed is kept in the ground for {seasonYear}. <a href="/keep-or-dig">Choose the beds</a>
        </p>
      ) : (
        <p>
          When the covers are off, count the clumps that shoot. The count becomes that planting’s own survival: this
          season is forecast with it, and it goes along when the planting is carried to next year.
        </p>
      )}
      {beds.flatMap(({ bed, plantings: rows }) =>
        rows.map(({ kept: { planting: row, variety } }) => {
          const planting = plantings.get(row.id) ?? row;
          const own = planting.winterSurvivalShare;
          return (
            <div key={planting.id} className="count-line">
              <p>
                <a href={`/beds/${bed.id}`}>{bed.name}</a>, {variety.name} <ColourWord colour={variety.colour} />:{" "}
                {countOf(planting.plantCount, "clump")} left in.{" "}
                <span className="soft small">
                  {own === null
                    ? `The farm’s ${inPercent(snapshot.farm.winter.winterSurvivalShare)} is assumed.`
                    : `Its own number: ${inPercent(own)}.`}
                </span>
              </p>
              <Form
                action={recordCount}
                submit="Record the count"
                hidden={{ plantingId: planting.id }}
                label={`Live clumps of ${variety.name} in ${bed.name}`}
                isQuiet
              >
                <NumberField
                  name="liveCount"
                  label="Live clumps"
                  unit={`of ${planting.plantCount}`}
                  value={own === null ? "" : String(Math.round(own * planting.plantCount))}
                />
              </Form>
            </div>
          );
        }),
      )}
    </section>
  );
}
