import type { Metadata } from "next";
import { COLOURS, TREATMENTS } from "#lib/domain/words";
import { seasonYear } from "../../frame/season-year";
import { loadFarm } from "../../load";
import { bedsGrid, plantingsGrid } from "./grid-columns";
import { SheetGrid } from "./sheet-grid.client";

export const metadata: Metadata = { title: "Many at once" };

/** Beds and plantings as grids: typed, or pasted from a spreadsheet, checked as a sheet is, and added as one change. */
export default async function GridPage() {
  const { farm, beds, crops, varieties } = loadFarm();
  const known = {
    units: farm.units,
    beds: beds.map(({ name }) => name),
    crops: crops.map(({ name }) => name),
    varieties: [...new Set(varieties.map(({ name }) => name))],
    colours: COLOURS,
    treatments: TREATMENTS,
  };
  const bedMetres = Object.fromEntries(beds.map(({ name, lengthMetres }) => [name.toLowerCase(), lengthMetres]));
  const shared = { units: farm.units, writing: { decimalMark: farm.decimalMark, dateOrder: farm.dateOrder } };
  return (
    <>
      <p className="crumb">
        <a href="/beds">Beds</a>
      </p>
      <h1>Many at once</h1>
      <p>
        Type, or copy cells in a spreadsheet and paste them where they belong. A row of the same bed, or of the same
        planting and day, changes the one that is there. Nothing is written before you have seen what would change.
      </p>
      <SheetGrid {...shared} grid={plantingsGrid(known)} season={String(await seasonYear())} bedMetres={bedMetres} />
      <SheetGrid {...shared} grid={bedsGrid(known)} />
    </>
  );
}
