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
  const { waves, means } = basisOf(dayCount);
  const sizes = solved(means.map((row, month) => [...row, monthlyMeans[month]]));
  const days = new Float64Array(dayCount);
  for (let wave = 0; wave < MONTH_COUNT; wave++)
    for (let day = 0; day < dayCount; day++) days[day] += sizes[wave] * waves[wave][day];
  return days;
}

type Basis = { readonly waves: readonly Float64Array[]; readonly means: readonly (readonly number[])[] };

const bases = new Map<number, Basis>();

/** The waves of a year of so many days and their means by month, made once. */
function basisOf(dayCount: number): Basis {
  const known = bases.get(dayCount);
  if (known) return known;
  const waves = wavesOf(dayCount);
  const basis = { waves, means: meansByMonth(waves, dayCount) };
  bases.set(dayCount, basis);
  return basis;
}

/** The twelve waves, each with its value on every day: the sixth cosine is left out, since its monthly means are all but nothing. */
function wavesOf(dayCount: number): Float64Array[] {
  const waves = [new Float64Array(dayCount).fill(1)];
  for (let wave = 1; waves.length < MONTH_COUNT; wave++) {
    const sine = new Float64Array(dayCount);
    const cosine = new Float64Array(dayCount);
    for (let day = 0; day < dayCount; day++) {
      const angle = (2 * Math.PI * wave * (day + 0.5)) / dayCount;
      sine[day] = Math.sin(angle);
      cosine[day] = Math.cos(angle);
    }
    waves.push(sine);
    if (waves.length < MONTH_COUNT) waves.push(cosine);
  }
  return waves;
}

/** The mean of each wave over each month: a row a month. */
function meansByMonth(waves: readonly Float64Array[], dayCount: number): number[][] {
  let from = 0;
  return MONTH_LENGTHS.map((length, month) => {
    const to = from + length + (month === 1 ? dayCount - 365 : 0);
    const means = waves.map((wave) => {
      let sum = 0;
      for (let day = from; day < to; day++) sum += wave[day];
      return sum / (to - from);
    });
    from = to;
    return means;
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
