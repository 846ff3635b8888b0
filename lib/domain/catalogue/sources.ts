import type { Source } from "#lib/domain/catalogue-types";
import { GROUND_SOURCES } from "./ground-sources";
import { GROWING_SOURCES } from "./growing-sources";
import { HEAT_SOURCES } from "./heat-sources";
import { HOLD_SOURCES } from "./hold-sources";
import { WINTER_SOURCES } from "./winter-sources";

/**
 * Every source that a built-in number, note or caution names, by its id. `address` is where it was read, often a copy or an abstract;
 * it is empty when the source was seen only as quoted elsewhere or in a list of search results, and then no number is marked as published by it.
 */
export const SOURCES: Readonly<Record<string, Source>> = {
  ...HOLD_SOURCES,
  ...GROWING_SOURCES,
  ...GROUND_SOURCES,
  ...HEAT_SOURCES,
  ...WINTER_SOURCES,
};
