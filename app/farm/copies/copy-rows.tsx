import type { Copy, CopyReason } from "#db/copies/copy-name";
import { Form } from "../../ui/form.client";
import { countOf } from "../../ui/numbers";
import { restore } from "./copy-actions";

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
      <table className="cards-on-phone">
        <caption className="visually-hidden">Copies, newest first</caption>
        <thead>
          <tr>
            <th scope="col">When (UTC)</th>
            <th scope="col">Why</th>
            <th scope="col">Size</th>
            <th scope="col">Use</th>
          </tr>
        </thead>
        <tbody>
          {copies.map((copy) => (
            <CopyRow key={copy.name} copy={copy} />
          ))}
        </tbody>
      </table>
      <p className="small">
        Restoring makes the whole farm what the copy holds. What stands there now is copied first: restore that copy to
        undo it.
      </p>
    </>
  );

function CopyRow({ copy: { name, takenAt, reason, byteCount } }: { copy: Copy }) {
  const when = takenAt.slice(0, 16).replace("T", " ");
  return (
    <tr>
      <th scope="row" data-label="When (UTC)">
        {when}
      </th>
      <td data-label="Why">{REASONS[reason]}</td>
      <td data-label="Size">{countOf(Math.ceil(byteCount / 1000), "kilobyte")}</td>
      <td>
        <Form
          action={restore}
          submit="Restore"
          label={`Restore the copy of ${when}`}
          hidden={{ copyName: name }}
          isQuiet
          beside={
            <a className="button" href={`/farm/copies/${name}`} download>
              Download<span className="visually-hidden"> the copy of {when}</span>
            </a>
          }
        />
      </td>
    </tr>
  );
}
