/** Where stems that open go: cut on picking days, ascending, or lost; they sum to what opened [F4]. Day numbers. */
type Harvest = {
  readonly openedStems: number;
  readonly cutDays: readonly number[];
  readonly cutStems: readonly number[];
  readonly lostInFieldStems: number;
  readonly lostToFrostStems: number;
};

/**
 * Where the stems that open go. Frost takes what would open on its day or later, and what waits for a picking day that would come on it or later
 * and is still fresh when it strikes [F5]. What is left is cut on the next picking day within the field days, or lost in the field [F4]; a
 * sprayed bed has no picking day before the label allows [F6].
 * @param lastDay  the frost day of a tender crop, else infinity
 */
export function harvest(
  openingStems: Int32Array,
  opensFrom: number,
  lastDay: number,
  fieldDays: number,
  pickingDayFrom: (day: number) => number,
): Harvest {
  const cutDays: number[] = [];
  const cutStems: number[] = [];
  let openedStems = 0;
  let lostInFieldStems = 0;
  let lostToFrostStems = 0;
  for (let index = 0; index < openingStems.length; index++) {
    const stems = openingStems[index];
    if (stems === 0) continue;
    const opensOn = opensFrom + index;
    openedStems += stems;
    const cutOn = pickingDayFrom(opensOn);
    if (opensOn >= lastDay || (cutOn >= lastDay && lastDay - opensOn <= fieldDays)) lostToFrostStems += stems;
    else if (cutOn - opensOn > fieldDays) lostInFieldStems += stems;
    else if (cutDays.at(-1) === cutOn) cutStems[cutStems.length - 1] += stems;
    else {
      cutDays.push(cutOn);
      cutStems.push(stems);
    }
  }
  return { openedStems, cutDays, cutStems, lostInFieldStems, lostToFrostStems };
}
