import type { Planting } from "#lib/domain/records/planting";
import type { Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import type { WinterBed } from "#lib/plan/winter/beds";
import { countOf, inPercent } from "#lib/plan/words/numbers";
import { ColourWord } from "../../ui/colour-words";
import { Form } from "../../ui/form.client";
import { NumberField } from "../../ui/form-fields.client";
import { recordCount } from "./count-action";

type Props = { beds: readonly WinterBed[]; snapshot: Snapshot; seasonYear: number };

/** What came through: live clumps counted in spring, in place of what was assumed. */
export function CameThrough({ beds, snapshot, seasonYear }: Props) {
  const plantings = new Map(snapshot.plantings.map((planting) => [planting.id, planting]));
  const rows = beds.flatMap(({ bed, plantings: wintering }) =>
    wintering.map(({ kept: { planting, variety } }) => ({
      bed,
      variety,
      planting: plantings.get(planting.id) ?? planting,
    })),
  );
  return (
    <section aria-labelledby="came-through" className="no-print">
      <h2 id="came-through">What came through</h2>
      {rows.length === 0 ? (
        <p>
          No bed is kept in the ground for {seasonYear}. <a href="/keep-or-dig">Choose the beds</a>
        </p>
      ) : (
        <details className="fold">
          <summary>Write down the live clumps of {countOf(rows.length, "planting")}</summary>
          <p>
            When the covers are off, count the clumps that shoot. This season is forecast with the count, and{" "}
            <a href="/farm/year-end">Year’s end</a> learns from it what your ground lets through.
          </p>
          {rows.map((row) => (
            <CountLine key={row.planting.id} {...row} farmsShare={snapshot.farm.winter.winterSurvivalShare} />
          ))}
        </details>
      )}
    </section>
  );
}

type LineProps = { bed: WinterBed["bed"]; variety: Variety; planting: Planting; farmsShare: number };

/** One planting that was left in, and how many of its clumps shoot. */
function CountLine({ bed, variety, planting, farmsShare }: LineProps) {
  const own = planting.winterSurvivalShare;
  return (
    <div className="count-line">
      <p>
        <a href={`/beds/${bed.id}`}>{bed.name}</a>, {variety.name} <ColourWord colour={variety.colour} />:{" "}
        {countOf(planting.plantCount, "clump")} left in.{" "}
        <span className="soft small">
          {own === null ? `The farm’s ${inPercent(farmsShare)} is assumed.` : `Its own number: ${inPercent(own)}.`}
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
}
