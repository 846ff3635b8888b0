import type { Metadata } from "next";
import { z } from "zod";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { type JournalChange, KEPT, latestChanges, undoRefusal } from "#db/journal/journal";
import { wallTime } from "#db/journal/wall-time";
import { UndoForm } from "../../frame/undo-form";
import { farmDatabase } from "../../load";
import { Table } from "../../ui/table";
import { FarmTabs } from "../farm-tabs";

export const metadata: Metadata = { title: "History" };

const CHANGES_SHOWN = 50;

const query = z.object({ refused: z.coerce.number().int().optional().catch(undefined) });

/** The latest changes of the farm's records, each with its undo; and why an undo was refused. */
export default async function HistoryPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { refused: changeId } = query.parse(await searchParams);
  // The address names the change alone; why it cannot be undone is asked anew, so that no address can put words into the tool's mouth.
  const refused = changeId === undefined ? null : refusalOf(changeId);
  const changes = latestChanges(farmDatabase(), CHANGES_SHOWN);
  /** Taken back by a later change that was not taken back itself. */
  const isUndone = (changeId: number): boolean =>
    changes.some(({ id, undoesChangeId }) => undoesChangeId === changeId && !isUndone(id));
  return (
    <>
      <h1>Farm: history</h1>
      <FarmTabs open="/farm/history" />
      {refused && (
        <div className="notice bad" role="alert">
          <p>
            <strong>Not undone.</strong> {refused}
          </p>
        </div>
      )}
      <p>
        The latest {CHANGES_SHOWN} changes, newest first. A change can be taken back while nothing that it wrote has
        been changed since; taking back is itself a change, and can be taken back too. The latest {KEPT.changes} changes
        are kept; of very large ones, imports mostly, as many as hold {KEPT.rows.toLocaleString("en")} rows, and never
        fewer than {KEPT.changesWhateverTheirSize}.
      </p>
      {changes.length === 0 ? (
        <p>Nothing has been changed yet.</p>
      ) : (
        <Table
          caption="Latest changes"
          isCaptionHidden
          columns={[
            { head: "When", className: "soft", phone: "first", cell: ({ madeAt }) => wallTime(madeAt) },
            { head: "What", kind: "name", cell: ({ title }) => title },
            ...(changes.some(({ madeBy }) => madeBy !== null)
              ? [{ head: "Who", cell: ({ madeBy }: JournalChange) => madeBy ?? "at the machine" }]
              : []),
            {
              head: "Undo",
              kind: "tool",
              cell: (change) =>
                isUndone(change.id) ? (
                  <span className="soft">taken back</span>
                ) : (
                  <UndoForm changeId={change.id} title={change.title} />
                ),
            },
          ]}
          rows={changes}
          keyOf={({ id }) => id}
        />
      )}
    </>
  );
}

/** Also a file that another program holds, or a full disk, is a reason. */
function refusalOf(changeId: number): string | null {
  try {
    return undoRefusal(farmDatabase(), changeId);
  } catch (error) {
    if (error instanceof FarmFileRefused) return error.message;
    throw error;
  }
}
