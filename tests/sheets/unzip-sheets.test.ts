import { crc32 as zlibCrc32 } from "node:zlib";
import fc from "fast-check";
import { strToU8, zipSync } from "fflate";
import { expect, test } from "vitest";
import { MOST_UNPACKED_BYTES } from "#lib/sheets/unpack";
import { unzipSheets } from "#lib/sheets/unzip-sheets";
import { crc32 } from "#lib/sheets/zip-checksums";

const BEDS = "bed,length_m,width_m\nCafé,15,1.2\n";
const zipped = (files: Record<string, string | Uint8Array>, level: 0 | 6 = 6) =>
  zipSync(
    Object.fromEntries(
      Object.entries(files).map(([name, text]) => [name, typeof text === "string" ? strToU8(text) : text]),
    ),
    { level },
  );
const messages = (bytes: Uint8Array) => unzipSheets(bytes, "farm.zip").problems.map(({ message }) => message);

test("the sheets of a zip come out exactly, in the order of their names; other files are passed over", () => {
  const zip = zipped({
    "farm/plantings.csv": "a,b\r\n",
    "farm/beds.CSV": BEDS,
    "farm/photo.jpg": "…",
    "__MACOSX/farm/._beds.csv": "junk",
    "farm/._beds.csv": "junk",
  });
  expect(unzipSheets(zip)).toEqual({
    files: [
      { name: "farm/beds.CSV", text: BEDS },
      { name: "farm/plantings.csv", text: "a,b\r\n" },
    ],
    problems: [],
  });
});

test("what is not a zip, is cut short, or holds no sheet is a problem, not an exception", () => {
  const whole = zipped({ "beds.csv": BEDS });
  const notAZip = ["this is not a zip that can be opened: zip the sheets again, or bring them one by one"];
  for (const bytes of [new Uint8Array(), strToU8(BEDS), whole.slice(0, -30), whole.slice(40)])
    expect(messages(bytes)).toEqual(notAZip);
  expect(messages(zipped({ "beds.doc": BEDS }))).toEqual([
    'no sheet is in this zip: put files in it whose names end in ".csv" or ".xlsx"',
  ]);
  expect(messages(zipped({}))).toEqual([
    'no sheet is in this zip: put files in it whose names end in ".csv" or ".xlsx"',
  ]);
});

test("no single changed byte in a sheet's content goes unseen", () => {
  for (const level of [0, 6] as const) {
    const whole = zipped({ "beds.csv": BEDS }, level);
    const start = 30 + "beds.csv".length;
    const contentBytes = new DataView(whole.buffer).getUint32(18, true);
    for (let at = start; at < start + contentBytes; at++) {
      const changed = whole.slice();
      changed[at] = (changed[at] ?? 0) ^ 0x10;
      const { files, problems } = unzipSheets(changed);
      expect(files.length === 0 || JSON.stringify(files) === JSON.stringify([{ name: "beds.csv", text: BEDS }])).toBe(
        true,
      );
      expect(files.length + problems.length).toBe(1);
    }
  }
});

/** The same zip, its directory declaring another unpacked size for the first entry. */
function declaring(bytes: Uint8Array, unpackedBytes: number): Uint8Array {
  const changed = bytes.slice();
  const view = new DataView(changed.buffer);
  let entry = 0;
  while (view.getUint32(entry, true) !== 0x0201_4b50) entry += 1;
  view.setUint32(entry + 24, unpackedBytes, true);
  return changed;
}

test("a zip that declares a smaller size than it holds is damaged, not cut short in silence", () => {
  const bytes = declaring(zipped({ "beds.csv": BEDS.repeat(100) }), 20);
  expect(unzipSheets(bytes).files).toEqual([]);
  expect(messages(bytes)).toEqual(["damaged in the zip: zip the sheet again, or bring it by itself"]);
});

test("sheets of more than 24 MB together are refused before they are unpacked; of just 24 MB, taken", () => {
  const two = zipped({ "beds.csv": BEDS, "farm.csv": "x" });
  expect(unzipSheets(declaring(two, MOST_UNPACKED_BYTES - 3)).files).toHaveLength(2);
  expect(messages(declaring(two, MOST_UNPACKED_BYTES - 2))).toEqual([
    "the sheets unpack to more than 24 MB, or are more than 1000: split the zip, or leave out what is not needed",
  ]);
  const large = zipped({ "beds.csv": new Uint8Array(MOST_UNPACKED_BYTES + 1) });
  expect(large.length).toBeLessThan(100_000);
  expect(unzipSheets(large).files).toEqual([]);
});

test("sheets that fit one by one and not together are refused without one of them being unpacked", () => {
  const zip = zipped({ "a.csv": new Uint8Array(13 * 1024 * 1024), "b.csv": new Uint8Array(13 * 1024 * 1024) });
  expect(zip.length).toBeLessThan(60_000);
  expect(unzipSheets(zip).files).toEqual([]);
  expect(messages(zip)[0]).toContain("unpack to more than 24 MB");
});

test("more than a thousand files are refused", () => {
  const many = zipped(Object.fromEntries(Array.from({ length: 1001 }, (_, index) => [`${index}.csv`, "x"])));
  expect(messages(many)[0]).toContain("more than 1000");
});

test("a sheet that is not UTF-8 is a problem of its own; the others are taken", () => {
  const { files, problems } = unzipSheets(zipped({ "beds.csv": new Uint8Array([0x43, 0xe9, 0x0a]), "farm.csv": "x" }));
  expect(files).toEqual([{ name: "farm.csv", text: "x" }]);
  expect(problems).toEqual([
    {
      file: "beds.csv",
      line: 1,
      column: null,
      message: "not in UTF-8: save the sheet as CSV in UTF-8 and bring it again",
    },
  ]);
});

test("checksums are those of zlib, for any bytes", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      expect(crc32(bytes)).toBe(zlibCrc32(bytes));
    }),
    { seed: 74, numRuns: 300 },
  );
});
