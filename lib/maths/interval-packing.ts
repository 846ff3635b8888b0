/** Something that takes one place from `from` up to, and without, `until`, and what it is worth to have it in. Whole numbers; `worth` is not negative. */
export type Interval = { readonly from: number; readonly until: number; readonly worth: number };

/**
 * Which of some intervals to take, so that none of the times is taken more often than it has places and their worth adds up to the most there can be: exact.
 *
 * Taken intervals and free places make a flow along the times, so that an interval which comes in for one that goes out is a shortest way through it. They are offered
 * one after the other, and each changes the best choice of those before it along one such way at most. Whole numbers up to 2^53 stay exact.
 *
 * @param places  whole places at each time, from 0 on; an interval of no time takes none
 * @returns       for each interval whether it is taken
 * @throws RangeError if an interval ends before it begins or lies outside the times
 * Source: M. C. Carlisle and E. L. Lloyd, "On the k-coloring of intervals", Discrete Applied Mathematics 59, 1995 (as a flow), from memory.
 */
export function packedIntervals(intervals: readonly Interval[], places: readonly number[]): boolean[] {
  for (const { from, until } of intervals)
    if (from < 0 || until < from || until > places.length)
      throw new RangeError(`an interval must lie within 0 and ${places.length}, got ${from} to ${until}`);
  const taken = intervals.map(({ from, until }) => from === until);
  const free = [...places];
  intervals.forEach(({ from, until, worth }, index) => {
    if (taken[index]) return;
    const way = cheapestWay(intervals.slice(0, index), taken, free, { from: until, to: from });
    if (way.cost >= worth) return;
    taken[index] = true;
    for (const other of way.turned) taken[other] = !taken[other];
    for (let time = 0; time < places.length; time++)
      free[time] = places[time] - intervals.filter((one, at) => taken[at] && covers(one, time)).length;
  });
  return taken;
}

const covers = ({ from, until }: Interval, time: number): boolean => from <= time && time < until;

/** The intervals that come in or go out, and what is lost by it. */
type Way = { readonly cost: number; readonly turned: readonly number[] };

/**
 * The way back from an interval's end to its start that loses least: over a time backward by a free place, over a taken interval backward by giving it up; forward over a
 * time for nothing, and over one that is not taken by taking it.
 */
function cheapestWay(
  intervals: readonly Interval[],
  taken: readonly boolean[],
  free: readonly number[],
  { from, to }: { from: number; to: number },
): Way {
  const cost = new Array<number>(free.length + 1).fill(Number.POSITIVE_INFINITY);
  const steps: { before: number; turned: number | null }[] = [];
  cost[from] = 0;
  let isShorter = true;
  const step = (start: number, end: number, loss: number, turned: number | null) => {
    if (cost[start] + loss >= cost[end]) return;
    cost[end] = cost[start] + loss;
    steps[end] = { before: start, turned };
    isShorter = true;
  };
  while (isShorter) {
    isShorter = false;
    for (let time = 0; time < free.length; time++) {
      if (free[time] > 0) step(time + 1, time, 0, null);
      step(time, time + 1, 0, null);
    }
    intervals.forEach((one, index) => {
      if (taken[index]) step(one.until, one.from, one.worth, index);
      else step(one.from, one.until, -one.worth, index);
    });
  }
  const turned: number[] = [];
  if (cost[to] < Number.POSITIVE_INFINITY)
    for (let at = to; at !== from; at = steps[at].before) {
      const { turned: index } = steps[at];
      if (index !== null) turned.push(index);
    }
  return { cost: cost[to], turned };
}
