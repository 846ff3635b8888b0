import type { Metadata } from "next";
import { ROLES } from "#lib/domain/words";
import { loadFarm } from "../../load";
import { inTenths } from "../../ui/numbers";
import { FarmTabs } from "../farm-tabs";

export const metadata: Metadata = { title: "Recipes" };

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
      <table className="cards-on-phone">
        <caption className="visually-hidden">Recipes, stems in one piece</caption>
        <thead>
          <tr>
            <th scope="col">Recipe</th>
            {ROLES.map((role) => (
              <th key={role} scope="col" className="number">
                {role}
              </th>
            ))}
            <th scope="col">Origin</th>
          </tr>
        </thead>
        <tbody>
          {recipes.map((recipe) => (
            <tr key={recipe.id}>
              <th scope="row">
                <a href={`/farm/recipes/${recipe.id}`}>{recipe.name}</a>
                {recipe.unit !== "piece" && <span className="soft small"> a {recipe.unit}</span>}
              </th>
              {ROLES.map((role) => (
                <td key={role} className="number" data-label={role}>
                  {inTenths(recipe.lines.reduce((sum, line) => sum + (line.role === role ? line.stemsPerPiece : 0), 0))}
                </td>
              ))}
              <td data-label="Origin" className="small soft">
                {recipe.origin === "own" ? "your own" : recipe.origin}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
