import type { FarmFileRefused } from "#db/file/farm-file-refused";
import { farmCopies } from "../copies";
import { CopyRows } from "../farm/copies/copy-rows";
import { farmFile } from "../load";
import { putFileBack } from "./put-file-back-action";
import { StartHere } from "./start-here";

/** The farm's file cannot be used as it stands: what it is, where, and what mends it. */
export function FileRefused({ refused: { state, words, file, detail } }: { refused: FarmFileRefused }) {
  const { copies } = farmCopies();
  const isHeld = farmFile().isHeldAfterLoss;
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
      <ul className="ways">
        {words.mend.map((way) => (
          <li key={way}>{way}</li>
        ))}
      </ul>
      {isHeld && (
        <form action={putFileBack}>
          <p>The tool still holds all that was in the file, up to the last save.</p>
          <button type="submit" className="main">
            Put the file back
          </button>
        </form>
      )}
      {state === "missing" && !isHeld && copies.length === 0 ? (
        <StartHere file={file} />
      ) : (
        <section aria-labelledby="copies">
          <h2 id="copies">Copies</h2>
          <CopyRows copies={copies} />
        </section>
      )}
    </>
  );
}
