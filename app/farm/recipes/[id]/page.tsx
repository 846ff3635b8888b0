import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { loadFarm } from "../../../load";
import { Form } from "../../../ui/form.client";
import { deleteRecipe } from "../recipe-actions";
import { RecipeForm } from "../recipe-form";

type Props = { params: Promise<{ id: string }> };

const findRecipe = async ({ params }: Props) => {
  const { id } = await params;
  return loadFarm().recipes.find((recipe) => String(recipe.id) === id);
};

export async function generateMetadata(props: Props): Promise<Metadata> {
  return { title: (await findRecipe(props))?.name ?? "No such recipe" };
}

/** One recipe, to change or remove. */
export default async function RecipePage(props: Props) {
  const recipe = await findRecipe(props);
  if (!recipe) notFound();
  return (
    <>
      <p className="crumb">
        <a href="/farm/recipes">Recipes</a>
      </p>
      <h1>{recipe.name}</h1>
      <p className="soft">{recipe.origin === "own" ? "Your own recipe." : `Origin: ${recipe.origin}.`}</p>
      <RecipeForm recipe={recipe} farm={loadFarm().farm} />
      <h2 className="no-print">Remove</h2>
      <Form
        action={deleteRecipe}
        submit={`Remove ${recipe.name}`}
        hidden={{ recipeId: recipe.id }}
        label={`Remove ${recipe.name}`}
        beside={<span className="hint">Only while no booking asks for it. Can be undone.</span>}
        isQuiet
      />
    </>
  );
}
