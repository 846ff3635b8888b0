import type { ReviewAdvice } from "#lib/plan/learning/review/advice";
import { becauseInWords, recipeAdviceInWords, spareAdviceInWords } from "#lib/plan/words/review-words";
import { Form } from "../../ui/form.client";
import { adoptRecipe, adoptSpare } from "./review-actions";

/** What the reviewed events suggest, each taken with a tap. Nothing while they suggest nothing. */
export function AdviceList({ advice, seasonYear }: { advice: ReviewAdvice; seasonYear: number }) {
  const { spare, recipes } = advice;
  if (spare === null && recipes.length === 0) return null;
  return (
    <section aria-labelledby="suggested">
      <h2 id="suggested">What these events suggest</h2>
      <ul className="cards">
        {recipes.map((one) => (
          <li key={`${one.recipe.id} ${one.role}`} className="card">
            <p>
              <b>{recipeAdviceInWords(one)}.</b> {becauseInWords(one)}. Bookings still to come follow the recipe at
              once.
            </p>
            <Form
              action={adoptRecipe}
              submit="Take it"
              label={`Take ${recipeAdviceInWords(one)}`}
              hidden={{ seasonYear, recipeId: one.recipe.id, role: one.role, suggested: one.suggested }}
              isQuiet
            />
          </li>
        ))}
        {spare && (
          <li className="card">
            <p>
              <b>Take {spareAdviceInWords(spare)}.</b> {becauseInWords(spare)}. Bookings that stand keep theirs.
            </p>
            <Form
              action={adoptSpare}
              submit="Take it"
              label={`Take ${spareAdviceInWords(spare)}`}
              hidden={{ seasonYear, suggested: spare.suggested }}
              isQuiet
            />
          </li>
        )}
      </ul>
    </section>
  );
}
