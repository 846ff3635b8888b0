/**
 * The mean of numbers that come one by one, with its standard error.
 * Source: B. P. Welford, "Note on a method for calculating corrected sums of squares and products", Technometrics 4, 1962.
 */
export class RunningMean {
  count = 0;
  mean = 0;
  #squares = 0;

  add(number: number): void {
    this.count++;
    const before = number - this.mean;
    this.mean += before / this.count;
    this.#squares += before * (number - this.mean);
  }

  /** The variance of what the numbers were drawn from, without bias; 0 for fewer than two. */
  variance = (): number => (this.count < 2 ? 0 : this.#squares / (this.count - 1));

  /** How far the mean is likely to be from the true one: a standard deviation; 0 for fewer than two. */
  standardError = (): number => (this.count === 0 ? 0 : Math.sqrt(this.variance() / this.count));
}
