import { loadWhatIfs } from "#db/read/read";
import type { WhatIf } from "#lib/domain/what-if";
import { refusal } from "../action";
import { FarmUnreadable, farmDatabase } from "../load";

/** Every what-if that was kept, of every season, in the order they were made. */
export function keptWhatIfs(): readonly WhatIf[] {
  const read = loadWhatIfs(farmDatabase());
  if (!read.ok) throw new FarmUnreadable(read.problems);
  return read.parsed;
}

/** The what-if of an id, when it is still kept. */
export const keptWhatIf = (id: number): WhatIf | undefined => keptWhatIfs().find((row) => row.id === id);

/** What a form of a what-if is told that is not kept any more. */
export const GONE = refusal("whatIfId", "this what-if was removed meanwhile: undo that, or make a new one");
