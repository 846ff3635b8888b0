import { latestChanges } from "#db/journal/journal";
import { farmDatabase, whileHeld } from "../load";
import { undo } from "./undo-action";

/** What was written last, and the button that takes it back. */
export function LastChange() {
  const [change] = whileHeld(() => latestChanges(farmDatabase(), 1), []);
  if (!change) return null;
  return (
    <div className="lastchange" role="status">
      <span>Saved: {change.title}</span>
      <form action={undo}>
        <input type="hidden" name="changeId" value={change.id} />
        <button type="submit" className="quiet">
          Undo
        </button>
      </form>
    </div>
  );
}
