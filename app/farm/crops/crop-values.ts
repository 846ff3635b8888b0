import { isSameTrade } from "#lib/domain/built-in-figures";
import type { Parsed } from "#lib/domain/problem";
import { CROP, type Crop, cropFormSchema } from "#lib/domain/records/crop";
import type { Manner } from "#lib/domain/records/form";
import { OWN } from "#lib/domain/sourced";
import type { FormValues } from "../../ui/form-values";

/** A crop as its form says it. Months and colours to be had that differ from `before` are the farm's own. */
export function readCrop(values: FormValues, manner: Manner, before: Crop | undefined): Parsed<Omit<Crop, "id">> {
  const tradeOrigin = before?.tradeOrigin ?? OWN;
  const read = values.record(CROP, manner, { before, given: { tradeOrigin }, schema: cropFormSchema });
  if (!read.ok || (before && isSameTrade(before, read.parsed))) return read;
  return { ok: true, parsed: { ...read.parsed, tradeOrigin: OWN } };
}
