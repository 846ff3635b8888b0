import type { Farm } from "#lib/domain/records/farm-settings";
import type { PurchaseLine } from "#lib/plan/road/purchase-slips";
import { mistimed } from "#lib/plan/road/purchase-timing";
import { mistimedInWords } from "#lib/plan/words/purchase-words";
import { StateSign } from "../../ui/state-sign";

/** Why what was ordered does not serve its event, so that its stems still stand to be ordered; nothing where it does. */
export function MissedEvent({ line, farm }: { line: PurchaseLine; farm: Farm }) {
  const missed = mistimed(line, farm);
  return (
    missed && (
      <span className="state late">
        <StateSign of="late" />
        {mistimedInWords(missed)}
      </span>
    )
  );
}
