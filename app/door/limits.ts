/** The most that the tool takes at its door. Each stands well above what the largest farm needs. */

/** Letters of an address with its query: nine what-ifs side by side take a few hundred. */
export const MOST_ADDRESS_LETTERS = 4096;

/** A form, or a question in JSON: a booking with 300 lines takes about 30 kB. */
export const MOST_FORM_BYTES = 512 * 1024;

/** Sheets on their way in, zipped: a farm of 4,000 beds and 4,000 bookings takes about 200 kB. */
export const MOST_SHEETS_BYTES = 4 * 1024 * 1024;

/** The most bytes that a request to an address may carry. */
export const mostBodyBytes = (target: string): number =>
  target.split("?", 1)[0] === "/farm/files" ? MOST_SHEETS_BYTES : MOST_FORM_BYTES;

/** How long a sender may take, in milliseconds: for the head of a request, and for all of it. */
export const HEAD_WITHIN_MS = 10_000;
export const WHOLE_WITHIN_MS = 60_000;

/** Connections open at once; a browser holds six. */
export const MOST_CONNECTIONS = 500;
