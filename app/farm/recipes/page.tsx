import type { Metadata } from "next";
import type { Recipe } from "#lib/domain/records/recipe";
import { ROLES } from "#lib/domain/words";
import { inTenths } from "#lib/plan/words/numbers";
import { loadFarm } from "../../load";
import { type Column, Table } from "../../ui/table";
import { FarmTabs } from "../farm-tabs";

export const metadata: Metadata = { title: "Recipes" };

const COLUMNS: readonly Column<Recipe>[] = [
  {
    head: "Recipe",
    kind: "name",
    cell: ({ id, name, unit, origin }) => (
      <>
        <a href={`/farm/recipes/${id}`}>{name}</a>
        {unit !== "piece" && <span className="soft small"> a {unit}</span>}
        {origin === "own" && <span className="soft small"> your own</span>}
      </>
    ),
  },
  ...ROLES.map(
    (role): Column<Recipe> => ({
      head: role,
      kind: "number",
      cell: ({ lines }) => {
        const stems = stemsOf(lines.filter((line) => line.role === role));
        return stems > 0 && inTenths(stems);
      },
    }),
  ),
  { head: "In all", kind: "number", cell: ({ lines }) => <b>{inTenths(stemsOf(lines))}</b> },
];

const stemsOf = (lines: Recipe["lines"]): number => lines.reduce((sum, { stemsPerPiece }) => sum + stemsPerPiece, 0);

/** Every recipe with the stems of one piece, by role. */
export default function RecipesPage() {
  const { recipes } = loadFarm();
  return (
    <>
      <h1>Farm: recipes</h1>
      <FarmTabs open="/farm/recipes" />
      <p>
        Stems in one piece. The built-in ones are <em>common practice</em>: no published table was found. What you
        change becomes your own, and every booking that uses it follows.
      </p>
      <p className="actions">
        <a className="button main" href="/farm/recipes/new">
          Add a recipe
        </a>
      </p>
      <Table
        caption="Recipes, stems in one piece"
        isCaptionHidden
        columns={COLUMNS}
        rows={recipes}
        keyOf={({ id }) => id}
      />
    </>
  );
}
