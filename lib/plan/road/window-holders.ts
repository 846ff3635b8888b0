import { holdWindow } from "./hold-window";
import type { Match } from "./match";
import { holdersBy, type StemHolder } from "./stem-holders";

/**
 * Who has the stems that a need could take as they are: those that fit it and are cut in its hold window, by the booking that gets them, most first. The
 * need's own booking is left out. With what the need gets and what is free they are all stems in its reach.
 */
export function windowHolders(match: Match, needIndex: number): StemHolder[] {
  const need = match.needs[needIndex];
  const fitting = new Set([...match.fits.of(need).varieties, ...match.fits.othersOwn(need)]);
  const isInReach = (supplyIndex: number, cutDay: number) => {
    const { earliest, latest } = holdWindow(need.eventDay, need.leadDays, match.supplies[supplyIndex].hold);
    return cutDay >= earliest && cutDay <= latest;
  };
  return holdersBy(
    match,
    ({ needIndex: served, supplyIndex, cutDay }) =>
      match.needs[served].booking.id !== need.booking.id && fitting.has(supplyIndex) && isInReach(supplyIndex, cutDay),
  );
}
