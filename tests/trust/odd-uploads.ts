import { strToU8, zipSync } from "fflate";
import { oneOf, type RandomSource, wholeBetween } from "#lib/maths/random";
import { mangled, oddText } from "./odd-inputs";
import { oddWorkbook } from "./odd-workbook";

/** A sheet as the tool itself writes it. */
export type Sheet = { readonly name: string; readonly text: string };

/** The sheets that a page would send, zipped, some of them mangled, the zip or the form around it sometimes damaged. */
export function oddUpload(random: RandomSource, sheets: readonly Sheet[], boundary: string): Buffer {
  const chosen = Array.from({ length: wholeBetween(random, 0, 3) }, () => oneOf(random, sheets));
  const entries = chosen.map(({ name, text }, index) => [
    `${String(index).padStart(4, "0")}/${random() < 0.1 ? oddText(random).slice(0, 200) : name}`,
    strToU8(random() < 0.6 ? mangled(random, text) : text),
  ]);
  if (random() < 0.3) entries.push(["0009/season.xlsx", oddWorkbook(random)]);
  const zip = zipSync(Object.fromEntries(entries));
  if (random() < 0.3 && zip.length > 0)
    for (let count = wholeBetween(random, 1, 4); count > 0; count--)
      zip[wholeBetween(random, 0, zip.length - 1)] = wholeBetween(random, 0, 255);
  const odd = (text: string) => (random() < 0.05 ? oddText(random) : text);
  const field = (name: string, text: string) =>
    random() < 0.02 ? "" : `--${boundary}\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${text}\r\n`;
  const body = Buffer.concat([
    Buffer.from(
      field("_1_step", odd(oneOf(random, ["check", "all", "clean"]))) +
        field("_1_sending", odd("1")) +
        `--${boundary}\r\nContent-Disposition: form-data; name="${odd("_1_files")}"; filename="blob"\r\nContent-Type: application/octet-stream\r\n\r\n`,
    ),
    zip,
    Buffer.from(`\r\n${field("0", odd('[{"kind":"none"},"$K1"]'))}--${boundary}--\r\n`),
  ]);
  return random() < 0.05 ? body.subarray(0, wholeBetween(random, 0, body.length)) : body;
}
