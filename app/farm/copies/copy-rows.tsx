import type { Copy, CopyReason } from "#db/copies/copy-name";
import { isKeptForGood } from "#db/copies/remove-copy";
import { wallTime } from "#db/journal/wall-time";
import { inWholes } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { Table } from "../../ui/table";
import { deleteCopy, restore } from "./copy-actions";

const REASONS: Readonly<Record<CopyReason, string>> = {
  daily: "of the day",
  "by-hand": "taken by hand",
  "before-migration": "before new tables",
  "before-import": "before an import",
  "before-restore": "before a restore",
};

/** Copies, newest first, each to download or to restore. */
export const CopyRows = ({ copies }: { copies: readonly Copy[] }) =>
  copies.length === 0 ? (
    <p>No copy has been taken yet.</p>
  ) : (
    <>
      <Table
        caption="Copies, newest first"
        isCaptionHidden
        columns={[
          { head: "When", kind: "name", cell: whenOf },
          { head: "Why", cell: ({ reason }) => REASONS[reason] },
          { head: "Size", kind: "number", cell: ({ byteCount }) => `${inWholes(Math.ceil(byteCount / 1000))} kB` },
          { head: "Use", kind: "tool", cell: (copy) => <CopyTools copy={copy} /> },
        ]}
        rows={copies}
        keyOf={({ name }) => name}
      />
      <p className="small beneath">
        Restoring makes the whole farm what the copy holds. What stands there now is copied first: restore that copy to
        undo it.
      </p>
    </>
  );

const whenOf = ({ takenAt }: Copy): string => wallTime(takenAt);

const CopyTools = ({ copy }: { copy: Copy }) => (
  <div className="copy-tools">
    <Form
      action={restore}
      submit="Restore"
      label={`Restore the copy of ${whenOf(copy)}`}
      hidden={{ copyName: copy.name }}
      isQuiet
      beside={
        <a className="button" href={`/farm/copies/${copy.name}`} download>
          Download<span className="visually-hidden"> the copy of {whenOf(copy)}</span>
        </a>
      }
    />
    {isKeptForGood(copy) && <DeleteCopy copy={copy} />}
  </div>
);

/** A deleted copy is gone, so this asks first, with the name of the file. */
const DeleteCopy = ({ copy }: { copy: Copy }) => (
  <details>
    <summary>
      <span>
        Delete<span className="visually-hidden"> the copy of {whenOf(copy)}</span>…
      </span>
    </summary>
    <Form
      action={deleteCopy}
      submit="Delete it for good"
      label={`Delete the copy of ${whenOf(copy)}`}
      hidden={{ copyName: copy.name }}
      isQuiet
    >
      <p className="small">
        <code>{copy.name}</code> will be gone, from the second place too. Nothing brings it back.
      </p>
    </Form>
  </details>
);
