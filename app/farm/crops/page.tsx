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
        <em>Published</em>, <em>published-secondary</em> and <em>trade</em> have a source, named on the crop’s own page;{" "}
        <em>common practice</em> and <em>from memory</em> have none; <em>own</em> is yours.
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
