import type { z } from "zod";
import { count, recordSchema } from "./field";
import { STEM_LINE, STEM_SHEET } from "./stem-line";

const stemCount = count({ of: "stems", least: 1, most: 1_000_000, label: "Stems promised", heading: "promised_stems" });
const { role, cropId, cropOnly, asks, colours } = STEM_LINE;

export const PROMISED_STEMS = { role, cropId, cropOnly, asks, colours, stemCount };

/** Stems promised to a booking, a row. Absent or empty cells mean what they mean for stems asked for. */
export const PROMISE_SHEET = {
  client: STEM_SHEET.client,
  eventOn: STEM_SHEET.eventOn,
  role,
  crop: STEM_SHEET.crop,
  cropOnly,
  asks,
  colours,
  stemCount,
};

/** Stems that a client was told she gets, whole and spare included: for the need of the booking that is alike in role, crop, colours and what is asked of the stem. */
export const promisedStemsSchema = recordSchema(PROMISED_STEMS);
export type PromisedStems = z.infer<typeof promisedStemsSchema>;
