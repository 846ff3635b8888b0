import { strToU8, zipSync } from "fflate";
import type { Snapshot } from "#lib/domain/snapshot";
import { oneOf, type RandomSource, wholeBetween } from "#lib/maths/random";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import { readPastedRows } from "#lib/sheets/pasted-rows";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { unzipSheets } from "#lib/sheets/unzip-sheets";
import { parseBookingForm } from "../../app/bookings/editor/parse-form";
import { calledActions } from "../../app/door/called-actions";
import { judge } from "../../app/door/judge";
import { isWellFormed } from "../../app/door/well-formed";
import { formIn, readEnquiry } from "../../app/enquiry/asked-enquiry";
import { tokenIn, withoutToken } from "../../app/people/session-cookie";
import { choiceOf } from "../../app/picking/choice";
import { typedBooking, typedFocal } from "../app/typed-booking";
import { mangled, oddText } from "./odd-inputs";
import type { Sheet } from "./odd-uploads";
import { oddWorkbook } from "./odd-workbook";

/** Something that reads what comes from outside: given chance, it is fed one odd input, and may refuse it but never throw. */
export type OddRead = (random: RandomSource) => unknown;

/** A form that is taken as it stands: only so does an odd field of it meet more than the first gate. */
export const BOOKING = typedBooking({
  ...{ lapsesAfter: "2027-04-01", palette: "blush", alternativeColours: "peach", unacceptableColours: "white" },
  ...{ spareShare: "10", priceCents: "1480", unacceptableCropIds: [1], takenOn: "2027-03-01" },
  pieces: [{ recipeId: 1, pieceCount: "2", colours: "" }],
  stemLines: typedFocal("4"),
});
const PARTS =
  '--x\r\nContent-Disposition: form-data; name="_1_a"\r\n\r\nv\r\n--x\r\nContent-Disposition: form-data; name="0"\r\n\r\n["$K1",{"a":"$undefined"}]\r\n--x--\r\n';

/** Every reader of the tool that meets the outside, by name. */
export function oddReads(farm: Snapshot): Readonly<Record<string, OddRead>> {
  const sheets = someLinesOf(farm);
  const known = knownFarm(farm);
  const names = (rows: readonly { readonly name: string }[]) => rows.map(({ name }) => name);
  const pasted = { farm: farm.farm, recipes: names(farm.recipes), crops: names(farm.crops) };
  const zip = zipSync({ "beds.csv": strToU8(sheets[5]?.text ?? "") });
  const query = (random: RandomSource) => ({
    [oneOf(random, ["day", "week", "booking", "on", "x"])]: oneOf<unknown>(random, [
      oddText(random),
      [oddText(random), "2"],
      undefined,
    ]),
  });
  return {
    sheets: (random) => {
      const { name, text } = oneOf(random, sheets);
      return readFarmSheets([{ name, text: mangled(random, text) }], known);
    },
    zips: (random) => {
      const bytes = zip.slice(0, wholeBetween(random, zip.length - 40, zip.length));
      for (let count = 3; count > 0; count--)
        bytes[wholeBetween(random, 0, bytes.length - 1)] = wholeBetween(random, 0, 255);
      return unzipSheets(bytes);
    },
    workbooks: (random) => readFarmSheets(unzipSheets(zipSync({ "season.xlsx": oddWorkbook(random) })).files, known),
    "pasted rows": (random) => readPastedRows(mangled(random, "focal\t40\tblush, cream\nBridal bouquet\t1"), pasted),
    "booking forms": (random) => parseBookingForm(oddlyFilled(random, BOOKING), { units: "us" }),
    queries: (random) => [choiceOf(query(random)), readEnquiry(formIn(query(random)), { units: "us" })],
    "form calls": (random) =>
      isWellFormed("multipart/form-data; boundary=x", random() < 0.5, Buffer.from(mangled(random, PARTS))),
    "called actions": (random) =>
      calledActions(random() < 0.3 ? oddText(random) : undefined, [
        { name: mangled(random, "$ACTION_REF_1"), text: "" },
        { name: mangled(random, "$ACTION_1:0"), text: mangled(random, '{"id":"a","bound":"$@1"}') },
        { name: oddText(random), text: oddText(random) },
      ]),
    cookies: (random) => {
      const cookies = mangled(random, `theme=dark; session=${oddText(random)}; season=2027`);
      return [tokenIn(cookies), withoutToken(cookies)];
    },
    requests: (random) => {
      const headers = Object.fromEntries(
        ["host", "origin", "content-type", "content-length", "sec-fetch-site"].map((name) => [
          name,
          random() < 0.5 ? oddText(random) : undefined,
        ]),
      );
      const method = oneOf(random, ["GET", "POST", "TRACE", oddText(random)]);
      return judge({ method, target: `/${oddText(random)}`, headers, hostCount: wholeBetween(random, 0, 2) }, 3100);
    },
  };
}

/** The first lines of each sheet of a farm: enough for every column to be filled. */
export const someLinesOf = (farm: Snapshot): Sheet[] =>
  farmSheets(farm).map(({ name, text }) => ({ name, text: text.split("\r\n").slice(0, 6).join("\r\n") }));

/** The same thing with one value inside it put another. */
function oddlyFilled(random: RandomSource, value: unknown): unknown {
  if (random() < 0.1 || typeof value !== "object" || value === null)
    return oneOf<unknown>(random, [
      oddText(random),
      mangled(random, String(value)),
      null,
      1e300,
      -1,
      [],
      {},
      true,
      undefined,
    ]);
  const entries = Object.entries(value);
  const at = wholeBetween(random, 0, Math.max(0, entries.length - 1));
  const filled = entries.map(
    ([key, inside], index) => [key, index === at ? oddlyFilled(random, inside) : inside] as const,
  );
  return Array.isArray(value) ? filled.map(([, inside]) => inside) : Object.fromEntries(filled);
}
