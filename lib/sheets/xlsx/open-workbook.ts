import { decoded, unpack } from "../unpack";
import { readWorkbook, type Worksheet } from "./read-workbook";
import { Room, TooMuch } from "./room";

/** The sheets of a workbook, or in words why there are none; and how many bytes it unpacked to, texts that stand in many cells counted in each. */
type OpenedWorkbook = {
  readonly worksheets: readonly Worksheet[];
  readonly message: string | null;
  readonly unpackedBytes: number;
};

/**
 * Reads a workbook. Never throws. Nothing is unpacked that would be more than `mostBytes`, or that no sheet is made of; and its sheets and what stands
 * in their cells may come to twice that in letters.
 */
export function openWorkbook(bytes: Uint8Array, mostBytes: number): OpenedWorkbook {
  const refuse = (message: string, unpackedBytes = 0): OpenedWorkbook => ({ worksheets: [], message, unpackedBytes });
  const damaged = "not a workbook that can be read: save it as XLSX again, or its sheets as CSV";
  const tooMuch = "the workbook holds more than a farm: leave out what is not needed, or save its sheets as CSV";
  const unpacked = unpack(bytes, isPart, mostBytes);
  if (unpacked === "damaged") return refuse(damaged);
  if (unpacked === "too large") return refuse(tooMuch);
  const parts = new Map(unpacked.entries.map((entry) => [entry.name, entry]));
  const room = new Room(LETTERS_A_BYTE * mostBytes);
  const usedBytes = () => Math.max(unpacked.bytes, Math.ceil(room.usedLetters / LETTERS_A_BYTE));
  try {
    const worksheets = readWorkbook((path) => {
      const part = parts.get(path);
      if (!part) return undefined;
      const text = part.isWhole ? decoded(part.content) : null;
      if (text === null) throw new Error(`${path} is damaged`);
      return text;
    }, room);
    return worksheets.length > 0
      ? { worksheets, message: null, unpackedBytes: usedBytes() }
      : refuse("no sheet of this workbook has anything in it: put the rows in, or leave it out", usedBytes());
  } catch (error) {
    return refuse(error instanceof TooMuch ? tooMuch : damaged, usedBytes());
  }
}

/** A letter is read once as a part of its sheet, and once as what stands in a cell. */
const LETTERS_A_BYTE = 2;

/** Pictures, charts and the rest of a workbook are never unpacked. */
const isPart = (name: string): boolean =>
  /\.(xml|rels)$/i.test(name) && !/^(docProps|customXml|xl\/(theme|drawings|charts|media))\//i.test(name);
