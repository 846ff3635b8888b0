import type { ChangedRecipe } from "#lib/domain/built-in-recipes";
import type { RecipesOutcome } from "#lib/plan/what-if/figures-taken";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { linesInWords } from "#lib/plan/words/recipe-words";
import { type Column, Table } from "../../ui/table";
import { SettleButtons } from "./settle-buttons";

const COLUMNS: readonly Column<ChangedRecipe>[] = [
  { head: "Recipe", kind: "name", cell: ({ was }) => <a href={`/farm/recipes/${was.id}`}>{was.name}</a> },
  { head: "The farm has", cell: ({ was }) => linesInWords(was.lines) },
  { head: "Built in today", cell: ({ is }) => <strong>{linesInWords(is.lines)}</strong> },
];

type Props = { outcome: RecipesOutcome; isOpen: boolean };

/** The recipes that are built in otherwise today: what taking them would do to the season, and behind it each one, old and new. */
export const ChangedRecipesFold = ({ outcome: { changed, shortBefore, shortAfter }, isOpen }: Props) => (
  <li>
    <details className="fold" open={isOpen}>
      <summary>
        <h2>{countOf(changed.length, "recipe")}</h2>{" "}
        <span className="effect">
          {shortBefore === shortAfter ? (
            "no stem more or less is short"
          ) : (
            <>
              {inWholes(shortBefore)} stems short become <strong>{inWholes(shortAfter)}</strong>
            </>
          )}
        </span>
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
