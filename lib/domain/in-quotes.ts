const MOST_LETTERS = 80;

/** What a cell says, in quotes, as a problem repeats it: the beginning alone when it is long, so that a problem stays a sentence. */
export const inQuotes = (text: string): string =>
  text.length <= MOST_LETTERS ? `"${text}"` : `"${text.slice(0, MOST_LETTERS)}…"`;
