import { latestChanges } from "#db/journal/journal";
import { farmDatabase, whileHeld } from "../load";
import { UndoForm } from "./undo-form";

/** What was written last, and the button that takes it back. */
export function LastChange() {
  const [change] = whileHeld(() => latestChanges(farmDatabase(), 1), []);
  if (!change) return null;
  return (
    <div className="lastchange" role="status">
      <span>Saved: {change.title}</span>
      <UndoForm changeId={change.id} title={change.title} isQuiet />
    </div>
  );
}
