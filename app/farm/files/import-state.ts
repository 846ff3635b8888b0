import type { Problem } from "#lib/domain/problem";
import type { Reading } from "#lib/sheets/read-farm-sheets";

/** What came of the files that were sent: nothing was written unless it is `taken`. `sending` counts the sendings of the page. */
export type ImportState =
  | { readonly kind: "none" }
  /** No answer came. */
  | { readonly kind: "unanswered"; readonly sending: number }
  | ({ readonly kind: "checked"; readonly sending: number } & Pick<
      Reading,
      "problems" | "rowCount" | "cleanRowCount" | "perSheet"
    >)
  | { readonly kind: "refused"; readonly sending: number; readonly problems: readonly Problem[] }
  | { readonly kind: "taken"; readonly sending: number; readonly title: string };
