import { nameKey } from "#lib/domain/nearest-name";

/**
 * The key of a row in the farm's sheets: the number of its record, for a line also its place in it, and letters that stand for what it is
 * known by: "12-kwtzrd", "12.3-bcdfgh". A row of another farm, or one that has got another name since, has other letters, so that a key
 * never leads to a row that is not the one that went out. Letters are consonants alone: no spreadsheet takes them for a date or a number.
 */
export function rowKey(id: number, identity: string, place?: number): string {
  const line = place === undefined ? "" : `.${place + 1}`;
  return `${id}${line}-${lettersOf(identity)}`;
}

/** Whether a text could be a key, of whatever farm. */
export const isKey = (text: string): boolean => /^\d+(\.\d+)?-[bcdfghjkmnpqrstvwxyz]{6}$/i.test(text);

/** What a thing is known by when its names tell it from others, as one text: the identity that its key stands for. */
const nameIdentity = (...names: readonly string[]): string => JSON.stringify(names.map(nameKey));

/** The letters of the key of a thing that is known by these names. */
export const lettersOfNames = (...names: readonly string[]): string => lettersOf(nameIdentity(...names));

/** The letters of a key as it stands in a row: they tell what the row was called when it went out. Null where there is no key. */
export function lettersOfKey(written: string): string | null {
  const key = written.trim().toLowerCase();
  return isKey(key) ? key.slice(key.indexOf("-") + 1) : null;
}

const CONSONANTS = "bcdfghjkmnpqrstvwxyz";
const LETTER_COUNT = 6;

/** Six letters by the 32-bit FNV-1a hash. Source: https://datatracker.ietf.org/doc/html/draft-eastlake-fnv-21, section 2 */
function lettersOf(text: string): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  let letters = "";
  for (let count = 0; count < LETTER_COUNT; count++) {
    letters += CONSONANTS[hash % CONSONANTS.length];
    hash = Math.floor(hash / CONSONANTS.length);
  }
  return letters;
}
