import { ownSave } from "./own-save";
import { UndoForm } from "./undo-form";

/** What this device wrote last, for a while, and the button that takes it back. It makes room for a form that was not saved. */
export async function LastChange() {
  const change = await ownSave();
  if (!change) return null;
  return (
    <div className="lastchange" role="status">
      <span>Saved: {change.title}</span>
      <UndoForm changeId={change.id} title={change.title} isQuiet />
    </div>
  );
}
