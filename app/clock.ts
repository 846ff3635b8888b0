import { type Day, parseDay } from "#lib/domain/day";

/**
 * Today, by the calendar on the farmer's own wall (the machine's zone). Of all screens the only reader of the clock.
 * `FARM_TODAY`, when set, stands in for it, so that the browser tests see the same season every day.
 */
export function today(): Day {
  const fixed = process.env.FARM_TODAY;
  if (fixed) return parseDay(fixed);
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return parseDay(`${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`);
}

/** This moment, "YYYY-MM-DDThh:mm:ssZ", or the one so many seconds later. */
export const now = (laterSeconds = 0): string =>
  `${new Date(Date.now() + laterSeconds * 1000).toISOString().slice(0, 19)}Z`;

/** The moment at which this day began on the farm's wall, in UTC as the journal writes it, "YYYY-MM-DD hh:mm:ss". */
export function dayBegan(): string {
  const midnight = new Date();
  midnight.setHours(0, 0, 0, 0);
  return midnight.toISOString().slice(0, 19).replace("T", " ");
}
