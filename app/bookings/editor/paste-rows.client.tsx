"use client";

import { useId, useState, useTransition } from "react";
import type { OwnColour } from "#lib/domain/writing";
import type { SheetProblem } from "#lib/sheets/sheet-problem";
import { answered } from "../../ui/answered.client";
import { colourOf, wordsIn } from "../../ui/typed-colours";
import type { BookingForm } from "./draft";
import { OwnColourAsked } from "./own-colour-asked.client";
import { type Pasted, readPasted } from "./pasted-action";

type Rows = Pick<BookingForm, "pieces" | "stemLines">;

/** Rows copied from a spreadsheet: pieces and stems go into the form, and what cannot be read stays in the box with its problem. */
export function PasteRows({ ownColours, onRows }: { ownColours: readonly OwnColour[]; onRows: (rows: Rows) => void }) {
  const id = useId();
  const [text, setText] = useState("");
  const [problems, setProblems] = useState<readonly SheetProblem[]>([]);
  const [whyUnread, setWhyUnread] = useState<string | null>(null);
  const [isReading, startReading] = useTransition();
  const read = () =>
    startReading(async () => {
      const pasted = await answerTo(text);
      onRows(pasted.rows);
      setText(pasted.unread);
      setProblems(pasted.problems);
      setWhyUnread(pasted.whyUnread);
    });
  return (
    <details>
      <summary>Paste rows from a spreadsheet</summary>
      <div className="field">
        <label htmlFor={id}>Rows</label>
        <textarea
          id={id}
          value={text}
          onChange={(event) => setText(event.target.value)}
          aria-describedby={`${id}-hint`}
        />
        <p className="hint" id={`${id}-hint`}>
          One row a line, copied from a spreadsheet: a piece and how many (“Low centrepiece”, 12), or a role and its
          stems (“focal”, 40), then colours if you like.
        </p>
        {problems.length > 0 && <OwnColourAsked words={strangeColours(text, ownColours)} />}
        {whyUnread !== null && (
          <p className="problem" aria-live="polite">
            {whyUnread}
          </p>
        )}
        {problems.length > 0 && (
          <ul aria-live="polite">
            {problems.map(({ line, message }) => (
              <li key={`${line} ${message}`} className="problem">
                Row {line}: {message}
              </li>
            ))}
          </ul>
        )}
        <button type="button" onClick={read} disabled={isReading || text.trim() === ""}>
          Put the rows into the booking
        </button>
      </div>
    </details>
  );
}

/** Colours stand in the third cell of a row. */
const COLOURS_CELL = 2;

/** Words of the rows that stayed which stand for no colour. */
const strangeColours = (text: string, ownColours: readonly OwnColour[]): string[] =>
  text
    .split("\n")
    .flatMap((row) => wordsIn(row.split(row.includes("\t") ? "\t" : /[,;]/)[COLOURS_CELL] ?? ""))
    .filter((word) => /^[a-zà-ÿ\s-]+$/i.test(word) && colourOf(word, ownColours) === undefined);

/** What was pasted stays in the box when no answer comes. */
async function answerTo(text: string): Promise<Pasted> {
  const whyUnread = "No answer came from the farm’s computer: look whether it is on, then try again.";
  const nothing = { whyUnread, rows: { pieces: [], stemLines: [] }, unread: text, problems: [] };
  return (await answered(readPasted(text))) ?? nothing;
}
