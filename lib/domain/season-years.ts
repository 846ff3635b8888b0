/** The seasons that can be planned: any other year is a slip of the pen. */
export const FIRST_SEASON = 1990;
export const LAST_SEASON = 2200;

/** Whether a year is one that can be planned. */
export const isSeasonYear = (year: number): boolean =>
  Number.isInteger(year) && year >= FIRST_SEASON && year <= LAST_SEASON;

/** "choose a day from 1990 to 2200" */
export const DAY_IN_SEASONS = `choose a day from ${FIRST_SEASON} to ${LAST_SEASON}`;
