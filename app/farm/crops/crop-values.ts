import { isSameTrade, isSameTraits } from "#lib/domain/built-in-figures";
import type { Parsed } from "#lib/domain/problem";
import { CROP, type Crop, cropFormSchema } from "#lib/domain/records/crop";
import type { Manner } from "#lib/domain/records/form";
import { OWN } from "#lib/domain/sourced";
import type { FormValues } from "../../ui/form-values";

/** A crop as its form says it. Months and colours to be had, or head, stem and way out of water, that differ from `before` are the farm's own. */
export function readCrop(values: FormValues, manner: Manner, before: Crop | undefined): Parsed<Omit<Crop, "id">> {
  const { tradeOrigin, traitsOrigin } = before ?? { tradeOrigin: OWN, traitsOrigin: OWN };
  const read = values.record(CROP, manner, { before, given: { tradeOrigin, traitsOrigin }, schema: cropFormSchema });
  if (!read.ok || !before) return read;
  const now = read.parsed;
  return {
    ok: true,
    parsed: {
      ...now,
      tradeOrigin: isSameTrade(before, now) ? tradeOrigin : OWN,
      traitsOrigin: isSameTraits(before, now) ? traitsOrigin : OWN,
    },
  };
}
