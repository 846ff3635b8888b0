import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { today } from "../../clock";
import { SeasonHead } from "../../frame/season-head";
import { seasonYear } from "../../frame/season-year";
import { loadFarm, loadPlan } from "../../load";
import { Patterns } from "../../look/patterns";
import { IfMay } from "../../people/if-may";
import { Form } from "../../ui/form.client";
import { deleteBed } from "../actions";
import { BedForm } from "../bed-form";
import { sizeInWords, sprayInWords } from "../bed-words";
import { PlantingCard } from "../plantings/planting-card";
import { plantingChoices } from "../plantings/planting-choices";
import { PlantingForm } from "../plantings/planting-form";

type Props = { params: Promise<{ id: string }> };

const findBed = async ({ params }: Props) => {
  const { id } = await params;
  return loadFarm().beds.find((bed) => String(bed.id) === id);
};

export async function generateMetadata(props: Props): Promise<Metadata> {
  const bed = await findBed(props);
  return { title: bed ? `Bed ${bed.name}` : "No such bed" };
}

/** One bed: its plantings of the season with their bloom, and the forms to change them and the bed. */
export default async function BedPage(props: Props) {
  const bed = await findBed(props);
  if (!bed) notFound();
  const year = await seasonYear();
  const plan = loadPlan(year);
  const { farm } = plan.snapshot;
  const rows = plan.forecast.plantings.filter((row) => row.bed.id === bed.id);
  const choices = plantingChoices(plan.snapshot);
  const spray = sprayInWords(bed, today());
  return (
    <>
      <Patterns />
      <p className="crumb">
        <a href="/beds">Beds</a>
      </p>
      <SeasonHead title={`Bed ${bed.name}`} seasonYear={year} back={`/beds/${bed.id}`} />
      <p className="row">
        {sizeInWords(bed, farm.units)}
        {bed.flags.map((flag) => (
          <span key={flag} className="tag">
            {flag}
          </span>
        ))}
        {spray && <strong className="short-word">{spray}</strong>}
      </p>
      {bed.note && <p>{bed.note}</p>}
      <h2>Plantings of {year}</h2>
      {rows.length === 0 && <p>Nothing is planted here in {year} yet.</p>}
      <div className="stack">
        {rows.map((row) => (
          <PlantingCard key={row.planting.id} row={row} plan={plan} choices={choices} />
        ))}
      </div>
      <IfMay call="beds/actions.ts#saveBed">
        <section aria-labelledby="add">
          <h2 id="add">Add a planting</h2>
          <details open={rows.length === 0}>
            <summary>{rows.length === 0 ? "A new planting" : "Another planting in this bed"}</summary>
            <PlantingForm
              key={`${year}: ${rows.map(({ planting }) => planting.id).join()}`}
              bedId={bed.id}
              seasonYear={year}
              farm={farm}
              choices={choices}
            />
          </details>
        </section>
        <section aria-labelledby="bed">
          <h2 id="bed">The bed</h2>
          <details>
            <summary>Change its name, size, flags or spray, or remove it</summary>
            <BedForm bed={bed} farm={farm} />
            <Form
              action={deleteBed}
              submit={`Remove bed ${bed.name}`}
              hidden={{ bedId: bed.id }}
              beside={
                <span className="hint">
                  Its plantings of every season go with it. The Saved bar at the top can undo it.
                </span>
              }
              isQuiet
            />
          </details>
        </section>
      </IfMay>
    </>
  );
}
