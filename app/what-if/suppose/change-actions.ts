"use server";

import { z } from "zod";
import type { FarmDatabase } from "#db/client";
import { putWhatIf } from "#db/write/what-ifs";
import type { Change, WhatIf } from "#lib/domain/what-if";
import { action, refusal } from "../../action";
import { GONE, keptWhatIf } from "../kept-what-ifs";
import { toggledBed } from "./bed-toggle";
import { readChange } from "./change-values";
import { withChange } from "./with-change";

const whatIfId = z.coerce.number().int();
const put = (database: FarmDatabase, whatIf: WhatIf, changes: readonly Change[]) =>
  putWhatIf(database, { ...whatIf, changes: [...changes] });

/** Adds one change of any kind to a what-if. The farm is not touched. */
export const addChange = action(
  (values, farm) => {
    const whatIf = keptWhatIf(values.hiddenNumber("whatIfId"));
    if (!whatIf) return GONE;
    const change = readChange(values, farm, whatIf.seasonYear);
    return change.ok ? { ok: true, parsed: { whatIf, change: change.parsed } } : change;
  },
  (database, { whatIf, change }) => put(database, whatIf, withChange(whatIf.changes, change)),
);

/** Takes one change out of a what-if: the one shown at this place, and no other that has moved there since. */
export const takeChangeOut = action(
  z.object({ whatIfId, index: z.coerce.number().int(), shown: z.string() }),
  (database, { whatIfId, index, shown }) => {
    const whatIf = keptWhatIf(whatIfId);
    if (!whatIf) return GONE;
    return JSON.stringify(whatIf.changes[index]) === shown
      ? put(database, whatIf, whatIf.changes.toSpliced(index, 1))
      : refusal("index", "the list was changed meanwhile: look again, then remove it");
  },
);

const bedAndFuture = z
  .string()
  .regex(/^\d+ (kept|dug)$/)
  .transform((text) => text.split(" "));

/** Keeps a bed in the ground in a what-if, or digs it there. */
export const toggleBed = action(
  z.object({ whatIfId, bed: bedAndFuture }),
  (database, { whatIfId, bed: [bedId, future] }, farm) => {
    const whatIf = keptWhatIf(whatIfId);
    return whatIf ? put(database, whatIf, toggledBed(farm, whatIf, Number(bedId), future === "kept")) : GONE;
  },
);
