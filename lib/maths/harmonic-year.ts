const MONTH_COUNT = 12;
const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * A smooth year of daily values whose mean over each month is exactly the given one, without a step over New Year: a constant, five whole
 * waves and the sine of the sixth, whose monthly means are matched by solving twelve equations. Straight lines between mid-months would lose a
 * part of every summit.
 *
 * Differs from the source in taking months of their real length, and means over whole days: both make the monthly means exact.
 * @param monthlyMeans  twelve values, January first, in any unit
 * @param dayCount      365, or 366 for a year with 29 February
 * @returns             a value for each day, 1 January first
 * @throws RangeError   when there are not twelve means
 * Source: Epstein 1991, "On obtaining daily climatological values from monthly means", Journal of Climate 4, 365-368
 */
export function harmonicYear(monthlyMeans: readonly number[], dayCount: 365 | 366): Float64Array {
  if (monthlyMeans.length !== MONTH_COUNT)
    throw new RangeError(`monthlyMeans: twelve months are needed, not ${monthlyMeans.length}`);
  const waves = Array.from({ length: dayCount }, (_, day) => wavesOn((day + 0.5) / dayCount));
  const rows = monthsOf(dayCount).map(({ from, to }, month) => {
    const days = waves.slice(from, to);
    return [...waves[0].map((_, wave) => mean(days.map((ofDay) => ofDay[wave]))), monthlyMeans[month]];
  });
  const sizes = solved(rows);
  return Float64Array.from(waves, (ofDay) => ofDay.reduce((sum, wave, index) => sum + wave * sizes[index], 0));
}

/** The twelve waves at a share of the year: the sixth cosine is left out, since its monthly means are all but nothing. */
function wavesOn(share: number): number[] {
  const waves = [1];
  for (let wave = 1; wave <= 6; wave++) {
    waves.push(Math.sin(2 * Math.PI * wave * share));
    if (wave < 6) waves.push(Math.cos(2 * Math.PI * wave * share));
  }
  return waves;
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function monthsOf(dayCount: number): { from: number; to: number }[] {
  let from = 0;
  return MONTH_LENGTHS.map((length, month) => {
    const to = from + length + (month === 1 ? dayCount - 365 : 0);
    const days = { from, to };
    from = to;
    return days;
  });
}

/** Solves linear equations, each a row of factors with its right side last, by elimination with the largest pivot of each column. */
function solved(rows: readonly (readonly number[])[]): number[] {
  const left = rows.map((row) => [...row]);
  for (let column = 0; column < left.length; column++) {
    const below = left.slice(column).map((row) => Math.abs(row[column]));
    const pivot = column + below.indexOf(Math.max(...below));
    [left[column], left[pivot]] = [left[pivot], left[column]];
    for (let row = 0; row < left.length; row++) {
      if (row === column) continue;
      const times = left[row][column] / left[column][column];
      for (let cell = column; cell <= left.length; cell++) left[row][cell] -= times * left[column][cell];
    }
  }
  return left.map((row, index) => row[left.length] / row[index]);
}
