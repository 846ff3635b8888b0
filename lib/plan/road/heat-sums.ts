/** Degree days added up from `firstDay` on (a day number): `addedUp[n]` is the heat of the first n days. */
export type HeatSums = { readonly firstDay: number; readonly addedUp: Float64Array };

/** Adds up the heat of days, the first of which is `firstDay`. */
export function heatSums(firstDay: number, heatOfDays: Float64Array): HeatSums {
  const addedUp = new Float64Array(heatOfDays.length + 1);
  for (let index = 0; index < heatOfDays.length; index++) addedUp[index + 1] = addedUp[index] + heatOfDays[index];
  return { firstDay, addedUp };
}

/** The heat from the morning of one day to that of another; null where either lies outside the days that were added up. */
export function heatBetween({ firstDay, addedUp }: HeatSums, fromDay: number, toDay: number): number | null {
  const [from, to] = [fromDay - firstDay, toDay - firstDay];
  return from < 0 || to < from || to >= addedUp.length ? null : addedUp[to] - addedUp[from];
}

/** What floating point may lose of a sum between its parts. */
const LOST_SHARE = 1e-9;

/**
 * When the heat since the morning of `fromDay` reaches `sum`: a day number, with its fraction of the day, in which warmth runs evenly. Null when it
 * does not within the days that were added up, or when these begin later.
 */
export function momentOfHeat({ firstDay, addedUp }: HeatSums, fromDay: number, sum: number): number | null {
  const from = fromDay - firstDay;
  if (from < 0 || from >= addedUp.length) return null;
  const wanted = addedUp[from] + sum * (1 - LOST_SHARE);
  let low = from;
  let high = addedUp.length - 1;
  if (addedUp[high] < wanted) return null;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (addedUp[middle] >= wanted) high = middle;
    else low = middle + 1;
  }
  if (low === from) return fromDay;
  return firstDay + low - 1 + (wanted - addedUp[low - 1]) / (addedUp[low] - addedUp[low - 1]);
}
