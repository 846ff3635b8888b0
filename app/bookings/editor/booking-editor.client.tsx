"use client";

import { type FormEvent, useId, useState, useTransition } from "react";
import type { Problem } from "#lib/domain/problem";
import { STATUSES, type Status } from "#lib/domain/words";
import { FieldProblem } from "../../ui/field-problem";
import { saveBooking } from "../actions";
import { ColourField } from "./colour-field.client";
import { CoveragePanel } from "./coverage-panel";
import type { BookingForm, Choices } from "./draft";
import { PasteRows } from "./paste-rows.client";
import { PieceLines } from "./piece-lines.client";
import { StemLines } from "./stem-lines.client";
import { useCoverage } from "./use-coverage.client";

type Props = { bookingId: number | null; form: BookingForm; choices: Choices };

/** The booking form. Coverage is asked for with every keystroke; what was typed stays, whatever the server says of it. */
export function BookingEditor({ bookingId, form: initial, choices }: Props) {
  const [form, setForm] = useState(initial);
  const [refused, setRefused] = useState<readonly Problem[]>([]);
  const [isSaving, startSaving] = useTransition();
  const answer = useCoverage(form, bookingId);
  const id = useId();
  const set = (part: Partial<BookingForm>) => {
    setRefused([]);
    setForm((before) => ({ ...before, ...part }));
  };
  const problemAt = (place: string) => refused.find((problem) => problem.place === place)?.message;
  const save = (event: FormEvent) => {
    event.preventDefault();
    startSaving(async () => setRefused((await saveBooking(bookingId, form)) ?? []));
  };
  const text = (name: "client" | "eventOn" | "sparePercent") => ({
    id: `${id}-${name}`,
    value: form[name],
    onChange: (event: { target: { value: string } }) => set({ [name]: event.target.value }),
    "aria-invalid": problemAt(name) ? true : undefined,
    "aria-describedby": `${id}-${name}-problem`,
  });
  return (
    <form onSubmit={save} noValidate>
      {refused.length > 0 && (
        <div className="notice bad" role="alert">
          <p>
            <strong>Not saved.</strong> {refused.length === 1 ? "One thing" : `${refused.length} things`} to mend; what
            you typed is still here.
          </p>
          <ul>
            {refused.map(({ place, message }) => (
              <li key={place}>
                {placeInWords(place)}: {message}
              </li>
            ))}
          </ul>
        </div>
      )}
      <div className="fields">
        <div className="field">
          <label htmlFor={`${id}-client`}>Client</label>
          <input {...text("client")} autoComplete="off" required />
          <FieldProblem id={`${id}-client-problem`} message={problemAt("client")} />
        </div>
        <div className="field">
          <label htmlFor={`${id}-eventOn`}>Day of the event</label>
          <input {...text("eventOn")} type="date" required />
          <FieldProblem id={`${id}-eventOn-problem`} message={problemAt("eventOn")} />
        </div>
        <div className="field">
          <label htmlFor={`${id}-status`}>Status</label>
          <select
            id={`${id}-status`}
            value={form.status}
            onChange={(event) => set({ status: event.target.value as Status })}
          >
            {STATUSES.map((status) => (
              <option key={status}>{status}</option>
            ))}
          </select>
        </div>
        <div className="field">
          <label htmlFor={`${id}-sparePercent`}>
            Spare <span className="unit">%</span>
          </label>
          <input {...text("sparePercent")} inputMode="decimal" />
          <FieldProblem id={`${id}-sparePercent-problem`} message={problemAt("sparePercent")} />
        </div>
        <div className="field wide">
          <ColourField
            label="Palette, best colour first"
            hint="For example: blush, cream, white. Leave it empty if any colour will do."
            value={form.palette}
            onChange={(palette) => set({ palette })}
            problem={problemAt("palette")}
          />
        </div>
      </div>
      <PieceLines pieces={form.pieces} choices={choices} onChange={(pieces) => set({ pieces })} problemAt={problemAt} />
      <StemLines
        lines={form.stemLines}
        choices={choices}
        onChange={(stemLines) => set({ stemLines })}
        problemAt={problemAt}
      />
      <PasteRows
        onRows={({ pieces, stemLines }) =>
          set({ pieces: [...form.pieces, ...pieces], stemLines: [...form.stemLines, ...stemLines] })
        }
      />
      <details>
        <summary>Not wanted, and a note</summary>
        <fieldset>
          <legend>Crops the client will not have</legend>
          <div className="row">
            {choices.crops.map((crop) => (
              <label key={crop.id} className="check">
                <input
                  type="checkbox"
                  checked={form.unacceptableCropIds.includes(crop.id)}
                  onChange={({ target }) =>
                    set({
                      unacceptableCropIds: target.checked
                        ? [...form.unacceptableCropIds, crop.id]
                        : form.unacceptableCropIds.filter((cropId) => cropId !== crop.id),
                    })
                  }
                />
                {crop.name}
              </label>
            ))}
          </div>
        </fieldset>
        <div className="field">
          <label htmlFor={`${id}-note`}>Note</label>
          <textarea id={`${id}-note`} value={form.note} onChange={(event) => set({ note: event.target.value })} />
          <FieldProblem id={`${id}-note-problem`} message={problemAt("note")} />
        </div>
      </details>
      <CoveragePanel answer={answer} />
      <div className="actions">
        <button type="submit" className="main" disabled={isSaving}>
          {isSaving ? "Saving…" : bookingId === null ? "Save the booking" : "Save the changes"}
        </button>
        <a className="button" href="/bookings">
          Leave without saving
        </a>
      </div>
    </form>
  );
}

/** "pieces[2].pieceCount" → "Piece 3" */
function placeInWords(place: string): string {
  const line = /^(pieces|stemLines)\[(\d+)\]/.exec(place);
  if (line) return `${line[1] === "pieces" ? "Piece" : "Stem line"} ${Number(line[2]) + 1}`;
  const names: Record<string, string> = {
    client: "Client",
    eventOn: "Day of the event",
    sparePercent: "Spare",
    palette: "Palette",
    note: "Note",
  };
  return names[place] ?? place;
}
