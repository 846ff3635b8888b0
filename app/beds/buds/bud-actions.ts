"use server";

import { recordBudLook } from "#db/write/bud-looks";
import { BUD_LOOK } from "#lib/domain/records/bud-look";
import { action } from "../../action";

/** Keeps what the buds of a bed look like today. */
export const noteBuds = action((values, { farm }) => values.record(BUD_LOOK, farm), recordBudLook);
