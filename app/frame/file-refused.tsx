import type { FarmFileRefused } from "#db/file/farm-file-refused";
import { farmCopies } from "../copies";
import { CopyRows } from "../farm/copies/copy-rows";
import { farmFile } from "../load";
import { putFileBack } from "./put-file-back-action";

/** The farm's file cannot be used as it stands: what it is, where, and what mends it. */
export function FileRefused({ refused: { words, file, detail } }: { refused: FarmFileRefused }) {
  return (
    <>
      <h1>{words.title}</h1>
      <div className="notice bad">
        <p>{words.what}</p>
        <p>
          The file: <code>{file}</code>
        </p>
        {detail && <p className="small">{detail}</p>}
      </div>
      <ul>
        {words.mend.map((way) => (
          <li key={way}>{way}</li>
        ))}
      </ul>
      {farmFile().isHeldAfterLoss && (
        <form action={putFileBack}>
          <p>The tool still holds all that was in the file, up to the last save.</p>
          <button type="submit" className="main">
            Put the file back
          </button>
        </form>
      )}
      <h2>Copies</h2>
      <CopyRows copies={farmCopies().copies} />
    </>
  );
}
