import fc from "fast-check";
import { toDay, toDayNumber } from "#lib/domain/day";
import { TREATMENTS } from "#lib/domain/words";
import { day } from "../small-farm";

/** A first cut of a season, with a planting day before it or none; whose it is, is the caller's to say. */
export const anyFirstCut = fc
  .record({
    treatment: fc.constantFrom(...TREATMENTS),
    seasonYear: fc.integer({ min: 1700, max: 2200 }),
    firstCut: fc.integer({ min: toDayNumber(day("1990-01-01")), max: toDayNumber(day("2060-12-31")) }).map(toDay),
    daysBefore: fc.option(fc.integer({ min: 1, max: 700 })),
  })
  .map(({ daysBefore, ...rest }) => ({
    ...rest,
    plantedOn: daysBefore === null ? null : toDay(toDayNumber(rest.firstCut) - daysBefore),
  }));

/** First cuts of which no two are known by the same, whatever their crop. */
export const anyFirstCuts = fc.uniqueArray(anyFirstCut, { selector: ({ seasonYear }) => seasonYear, maxLength: 4 });
