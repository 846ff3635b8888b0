import type { PickChoice } from "#lib/plan/road/pick-sheets";
import { PrintButton } from "../ui/print-button.client";
import { queryOf } from "./choice";

/** Over what comes out of the printer: the button that prints it, and the way back to the list. */
export const PaperActions = ({ choice }: { choice: PickChoice | null }) => (
  <div className="actions">
    <PrintButton />
    <a className="button" href={choice ? `/picking?${queryOf(choice)}` : "/picking"}>
      Back
    </a>
  </div>
);
