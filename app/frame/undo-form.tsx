import { farmRevision } from "../load";
import { SAVE_KEY } from "../ui/sending";
import { undo } from "./undo-action";

type Props = { changeId: number; title: string; isQuiet?: boolean };

/** The button that takes a change back. Pressed twice, in two tabs even, it takes it back once: both tries of one page have one key. */
export const UndoForm = ({ changeId, title, isQuiet = false }: Props) => (
  <form action={undo}>
    <input type="hidden" name="changeId" value={changeId} />
    <input type="hidden" name={SAVE_KEY} value={`undo ${changeId} at ${farmRevision()}`} />
    <button type="submit" className={isQuiet ? "quiet" : undefined} aria-label={`Undo: ${title}`}>
      Undo
    </button>
  </form>
);
