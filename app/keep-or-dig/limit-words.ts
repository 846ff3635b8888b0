import { MEASURES } from "#lib/domain/measures";
import type { Units } from "#lib/domain/words";
import { inTenths } from "../ui/numbers";

/**
 * A limit of the winter in the farm's own units. The plan names limits in metric, "21.5 m3 of leaves at hand"; what reads otherwise is left
 * as it is.
 */
export const limitInWords = (limit: string, units: Units): string =>
  limit.replace(/^([\d.]+) (m3|m2)\b/, (_, metric: string, unit: string) => {
    const { word, shownPerStored } = MEASURES[units][unit === "m3" ? "volume" : "area"];
    return `${inTenths(Number(metric) * shownPerStored)} ${word}`;
  });
