import type { Metadata } from "next";
import { loadFarm } from "../../load";
import { FarmTabs } from "../farm-tabs";
import { CropRows } from "./crop-rows";

export const metadata: Metadata = { title: "Crops" };

/** Every crop of the farm with its numbers and how sure we are of each. */
export default function CropsPage() {
  const { crops, varieties } = loadFarm();
  const counts = new Map<number, number>();
  for (const { cropId } of varieties) counts.set(cropId, (counts.get(cropId) ?? 0) + 1);
  const sorted = [...crops].sort((a, b) => a.name.localeCompare(b.name));
  return (
    <>
      <h1>Farm: crops</h1>
      <FarmTabs open="/farm/crops" />
      <p>
        Days held between cut and event, days a bloom waits in the field, stems in a bunch and in a bucket, and what a
        stem costs to buy in. Bold is your own; where each of the others comes from stands on its crop’s page.
      </p>
      <p className="actions">
        <a className="button main" href="/farm/crops/new">
          Add a crop
        </a>
      </p>
      <CropRows crops={sorted} varietyCounts={counts} />
    </>
  );
}
