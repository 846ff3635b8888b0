"use server";

import { readPastedRows } from "#lib/import/pasted-rows";
import type { SheetProblem } from "#lib/import/sheet-problem";
import { loadFarm } from "../load";
import type { BookingForm } from "./draft";

/** Rows pasted from a spreadsheet: those that could be read as lines of the form, the rest as text with its problems. Writes nothing. */
export type Pasted = {
  rows: Pick<BookingForm, "pieces" | "stemLines">;
  unread: string;
  problems: readonly SheetProblem[];
};
