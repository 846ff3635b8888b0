import type { ChangedRecipe } from "#lib/domain/built-in-recipes";
import { countOf } from "#lib/plan/words/numbers";
import { linesInWords } from "#lib/plan/words/recipe-words";
import { type Column, Table } from "../../ui/table";
import { RecipesEffect } from "./effects.client";
import { SettleButtons } from "./settle-buttons";

const COLUMNS: readonly Column<ChangedRecipe>[] = [
  { head: "Recipe", kind: "name", cell: ({ was }) => <a href={`/farm/recipes/${was.id}`}>{was.name}</a> },
  { head: "The farm has", cell: ({ was }) => linesInWords(was.lines) },
  { head: "Built in today", cell: ({ is }) => <strong>{linesInWords(is.lines)}</strong> },
];

type Props = { changed: readonly ChangedRecipe[]; isOpen: boolean };

/** The recipes that are built in otherwise today: what taking them would do to the season, and behind it each one, old and new. */
export const ChangedRecipesFold = ({ changed, isOpen }: Props) => (
  <li>
    <details className="fold" open={isOpen}>
      <summary>
        <h2>{countOf(changed.length, "recipe")}</h2> <RecipesEffect />
      </summary>
      <Table
        caption="Recipes, stems in one piece"
        isCaptionHidden
        className="changed-figures"
        columns={COLUMNS}
        rows={changed}
        keyOf={({ was }) => was.id}
      />
      <p className="soft">A recipe that you change by hand on its own page is yours, and leaves this list.</p>
      <SettleButtons of="recipes" name="the recipes" />
    </details>
  </li>
);
