"use client";

import { type ChangeEvent, useId, useState, useTransition } from "react";
import { countOf } from "#lib/plan/words/numbers";
import { MOST_SHEETS_BYTES } from "../../door/limits";
import { answered } from "../../ui/answered.client";
import { SAVE_KEY, SaveKeys } from "../../ui/sending";
import { bringIn } from "./actions";
import { ImportAnswer } from "./import-answer";
import type { ImportState } from "./import-state";
import { type ChosenFile, opened, packed, pasted } from "./upload";

/** Room for the rest of the form beside the sheets. */
const MOST_BYTES_SENT = MOST_SHEETS_BYTES - 10_000;

const TOO_MUCH = "That is more than goes through at once: bring the files in one after another.";

/** Files to bring in: chosen, listed, checked by the server, and brought in only when the grower says so. */
export function FileChoice() {
  const [files, setFiles] = useState<readonly ChosenFile[]>([]);
  const [rows, setRows] = useState("");
  const [complaints, setComplaints] = useState<readonly string[]>([]);
  const [sending, setSending] = useState(1);
  const [answer, setAnswer] = useState<ImportState>({ kind: "none" });
  const [isPending, startSending] = useTransition();
  const [keys] = useState(() => new SaveKeys());
  const id = useId();
  /** An answer counts only for what it was asked of. */
  const change = (next: readonly ChosenFile[]) => {
    setFiles(next);
    setSending(sending + 1);
  };
  const choose = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const chosen = await Promise.all(
      [...(target.files ?? [])].map(async (file) => ({
        name: file.name,
        bytes: new Uint8Array(await file.arrayBuffer()),
      })),
    );
    // Emptied, so that a file that was mended can be chosen again.
    target.value = "";
    const found = chosen.map(opened);
    setComplaints(found.flatMap((one) => one.complaints));
    const added = found.flatMap((one) => one.files);
    change([...files.filter(({ name }) => !added.some((other) => other.name === name)), ...added]);
  };
  const send = (step: "check" | "all" | "clean") => {
    const all = rows.trim() ? [...files, pasted(rows)] : files;
    const zip = packed(all);
    if (zip.length > MOST_BYTES_SENT) {
      setComplaints([TOO_MUCH]);
      return;
    }
    const form = new FormData();
    form.set("step", step);
    form.set("sending", String(sending));
    form.set("files", new Blob([zip]));
    setComplaints(complaints.filter((complaint) => complaint !== TOO_MUCH));
    // A check writes nothing, and must not use up the key of a sending that got no answer.
    const content = step === "check" ? null : `${sending} ${step}`;
    if (content !== null) form.set(SAVE_KEY, keys.keyOf(content));
    startSending(async () => {
      // When none comes, the files stay chosen and may be sent again.
      const came = await answered(bringIn({ kind: "none" }, form));
      if (content !== null) keys.settle(content, came !== null);
      setAnswer(came ?? { kind: "unanswered", sending });
      if (came?.kind !== "taken") return;
      // What is in the farm now is not brought in again by the next press of a button.
      setFiles([]);
      setRows("");
    });
  };
  const isEmpty = files.length === 0 && rows.trim() === "";
  const isCurrent = answer.kind !== "none" && (answer.sending === sending || answer.sending === 0);
  return (
    <div>
      <div className="fields">
        <div className="field wide">
          <label htmlFor={`${id}-files`}>Spreadsheets: CSV or XLSX, or a zip of them</label>
          <input
            id={`${id}-files`}
            type="file"
            multiple
            accept=".csv,.tsv,.txt,.xlsx,.zip"
            onChange={choose}
            aria-describedby={`${id}-hint`}
          />
          <p className="hint" id={`${id}-hint`}>
            After mending a file, choose it again: it takes the place of the one before.
          </p>
        </div>
        <div className="field wide">
          <label htmlFor={`${id}-rows`}>Or paste rows, with the row of column names</label>
          <textarea
            id={`${id}-rows`}
            value={rows}
            onChange={({ target }) => {
              setRows(target.value);
              setSending(sending + 1);
            }}
          />
        </div>
      </div>
      <div role="status">
        {complaints.map((complaint) => (
          <p key={complaint} className="problem">
            {complaint}
          </p>
        ))}
        {files.length > 0 && (
          <ul className="plain-list">
            {files.map(({ name, bytes }, index) => (
              <li key={name} className="row">
                <strong>{name}</strong>{" "}
                <span className="soft">{countOf(Math.ceil(bytes.length / 1000), "kilobyte")}</span>
                <button
                  type="button"
                  className="quiet"
                  aria-label={`Leave ${name} out`}
                  onClick={() => change(files.filter((_, place) => place !== index))}
                >
                  Leave out
                </button>
              </li>
            ))}
          </ul>
        )}
      </div>
      <div className="actions">
        <button
          type="button"
          className={isCurrent ? undefined : "main"}
          disabled={isEmpty || isPending}
          onClick={() => send("check")}
        >
          {isPending ? "Reading…" : "Check, write nothing"}
        </button>
      </div>
      <div aria-live="polite">{isCurrent && !isPending && <ImportAnswer answer={answer} onTake={send} />}</div>
    </div>
  );
}
