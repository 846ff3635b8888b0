import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { changeStatus, saveBooking } from "../../../app/bookings/actions";
import { farmDatabase } from "../../../app/load";
import { FRESH } from "../../../app/ui/form-state";
import { fill, kept } from "../../db/kept-farm";

/** The framework’s cache and cookies, which live inside its server, are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

const folder = mkdtempSync(join(tmpdir(), "farm-"));

beforeAll(() => {
  const file = join(folder, "farm.sqlite");
  const database = openFarm(file);
  fill(database);
  closeFarm(database);
  process.env.FARM_FILE = file;
});
afterAll(() => {
  farmDatabase().$client.close();
  rmSync(folder, { recursive: true });
  delete process.env.FARM_TODAY;
});

const formOf = (fields: Record<string, string>) => {
  const form = new FormData();
  for (const [name, typed] of Object.entries(fields)) form.set(name, typed);
  return form;
};
const TYPED = {
  ...{ client: "Taken", status: "held", eventOn: "2027-06-12", palette: "", alternativeColours: "", note: "" },
  ...{ unacceptableColours: "", spareShare: "0", unacceptableCropIds: [], pieces: [], takenOn: "" },
  stemLines: [{ role: "focal", cropId: null, cropOnly: false, asks: "", colours: "", stemCount: "4" }],
};
const taken = () => kept(farmDatabase()).bookings.find(({ client }) => client === "Taken");
/** Saves what stands in the form, on a day. */
const save = async (on: string, typed: object) => {
  process.env.FARM_TODAY = on;
  const bookingId = String(taken()?.id ?? "");
  await expect(saveBooking(FRESH, formOf({ bookingId, booking: JSON.stringify(typed) }))).rejects.toThrow(
    "NEXT_REDIRECT",
  );
};
const setStatus = (on: string, status: string) => {
  process.env.FARM_TODAY = on;
  return changeStatus(FRESH, formOf({ bookingId: String(taken()?.id), status }));
};

test("[T7] a booking is taken on the day it is saved first, keeps that day, and is taken anew when it is brought forward or taken back", async () => {
  await save("2027-05-03", TYPED);
  expect(taken()?.takenOn).toBe("2027-05-03");
  await save("2027-05-20", { ...TYPED, takenOn: "2027-05-03", note: "changed" });
  expect(taken()?.takenOn).toBe("2027-05-03");
  await save("2027-06-01", { ...TYPED, takenOn: "2027-05-03", eventOn: "2027-06-11" });
  expect(taken()?.takenOn).toBe("2027-06-01");
  expect((await setStatus("2027-06-04", "cancelled")).outcome).toBe("saved");
  expect(taken()?.takenOn).toBe("2027-06-01");
  expect((await setStatus("2027-06-05", "enquiry")).outcome).toBe("saved");
  expect(taken()?.takenOn).toBe("2027-06-05");
  await setStatus("2027-06-06", "enquiry");
  expect(taken()?.takenOn).toBe("2027-06-05");
});

test("a day that the grower types stands, and what is no day is refused at its field", async () => {
  await save("2027-06-07", { ...TYPED, eventOn: "2027-06-11", takenOn: "2027-04-30" });
  expect(taken()?.takenOn).toBe("2027-04-30");
  const odd = { ...TYPED, eventOn: "2027-06-11", takenOn: "2027-02-30" };
  const bookingId = String(taken()?.id);
  const answer = await saveBooking(FRESH, formOf({ bookingId, booking: JSON.stringify(odd) }));
  expect(answer.problems.map(({ place }) => place)).toEqual(["takenOn"]);
});
