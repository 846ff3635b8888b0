import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { oneOf, type RandomSource, wholeBetween } from "#lib/maths/random";
import { WORKBOOK_OF_1900 } from "../truth/xlsx-by-another";
import { mangled } from "./odd-inputs";

const PARTS = unzipSync(Buffer.from(WORKBOOK_OF_1900, "base64"));

/** A workbook of another program: one of its parts is mangled or not there, or some of its bytes are others. */
export function oddWorkbook(random: RandomSource): Uint8Array<ArrayBuffer> {
  const path = oneOf(random, Object.keys(PARTS));
  const { [path]: part = new Uint8Array(), ...others } = PARTS;
  const bytes = zipSync(random() < 0.1 ? others : { ...others, [path]: strToU8(mangled(random, strFromU8(part))) });
  if (random() < 0.2)
    for (let count = wholeBetween(random, 1, 4); count > 0; count--)
      bytes[wholeBetween(random, 0, bytes.length - 1)] = wholeBetween(random, 0, 255);
  return bytes;
}
