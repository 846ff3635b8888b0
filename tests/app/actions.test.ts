import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { revision } from "#db/journal/journal";
import { putPromises, removeBooking } from "#db/write/bookings";
import { putWhatIf, removeWhatIf } from "#db/write/what-ifs";
import { saveBed } from "../../app/beds/actions";
import { noteBuds } from "../../app/beds/buds/bud-actions";
import { keepOrDig, savePlanting } from "../../app/beds/plantings/planting-actions";
import { changeStatus, deleteBooking, saveBooking } from "../../app/bookings/actions";
import { promiseCovered } from "../../app/bookings/promises/promise-actions";
import { farmDatabase } from "../../app/load";
import { saveOrder } from "../../app/orders/order-actions";
import { type FormState, FRESH } from "../../app/ui/form-state";
import { takeChangeOut, toggleBed } from "../../app/what-if/suppose/change-actions";
import { done, kept } from "../db/kept-farm";
import { focal } from "../small-farm";
import { farmForActions } from "./farm-for-actions";
import { formOf } from "./form-of";
import { sentBooking, typedBooking, typedFocal } from "./typed-booking";

/** The server's own actions on a real farm; only the framework’s cache and cookies, which live inside its server, are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions();

const told = ({ outcome, problems }: FormState) => [outcome, ...problems.map(({ message }) => message)];

const actionFiles = readdirSync("app", { recursive: true, encoding: "utf8" })
  .map((path) => join("app", path))
  .filter((path) => /\.ts$/.test(path) && readFileSync(path, "utf8").startsWith('"use server"'));
/**
 * These ask nothing (a copy of the farm) or answer with something else than a form: a season, an undo, sheets, rows read without writing. The way in of
 * people writes no record of the farm; tests/app/people has it.
 */
const OTHER = /copies|frame|files|pasted|people|sign-in|join/;
/** These look and never write; they answer with what they see, not with a form. */
const ONLY_LOOK = ["compareWeather", "learnFirstCuts"];

test.each(actionFiles.filter((path) => !OTHER.test(path)))(
  "every action of %s refuses a form that says nothing, in words, and writes nothing",
  async (path) => {
    const actions: Record<string, (before: FormState, form: FormData) => Promise<FormState>> = await import(
      /* @vite-ignore */ `../../${path}`
    );
    const before = revision(farmDatabase());
    const logged = vi.spyOn(console, "error");
    for (const [name, act] of Object.entries(actions).filter(([name]) => !ONLY_LOOK.includes(name))) {
      const { outcome, problems, typed } = await act(FRESH, formOf({ typed: "is kept" }));
      expect([name, outcome]).toEqual([name, "refused"]);
      expect(problems.length, name).toBeGreaterThan(0);
      expect(typed, name).toEqual({ typed: ["is kept"] });
    }
    expect(revision(farmDatabase())).toBe(before);
    // What throws is refused in words too, and is a fault of ours.
    expect(logged).not.toHaveBeenCalled();
    logged.mockRestore();
  },
);

test("a look at the buds is kept with a tap, and a number of days that is none is refused in words", async () => {
  const look = { bedId: "1", varietyId: "1", lookedOn: "2027-07-01", sign: "early" };
  expect((await noteBuds(FRESH, formOf({ ...look, daysToCut: "" }))).outcome).toBe("saved");
  expect((await noteBuds(FRESH, formOf({ ...look, daysToCut: "5" }))).outcome).toBe("saved");
  expect(kept(farmDatabase()).budLooks).toMatchObject([{ sign: "early", daysToCut: 5 }]);
  expect((await noteBuds(FRESH, formOf({ ...look, daysToCut: "-5" }))).outcome).toBe("refused");
});

test("a standing order of a piece is of whole pieces, and names no crop beside it", async () => {
  const [{ id: recipeId }] = kept(farmDatabase()).recipes;
  const [{ id: cropId }] = kept(farmDatabase()).crops;
  const order = {
    buyer: "Market",
    kind: "market",
    weekday: "Sat",
    firstOn: "2027-06-05",
    lastOn: "2027-06-26",
    role: "",
  };
  const asked = (given: Record<string, string>) =>
    saveOrder(FRESH, formOf({ ...order, recipeId: String(recipeId), cropId: "", stemCents: "1.20", ...given }));
  const fields = ({ problems }: FormState) => problems.map(({ place }) => place);
  expect(fields(await asked({ askedCount: "2.5" }))).toEqual(["askedCount"]);
  expect(fields(await asked({ askedCount: "2", cropId: String(cropId) }))).toEqual(["cropId"]);
  expect((await asked({ askedCount: "2" })).outcome).toBe("saved");
});

test("a booking that was removed meanwhile cannot be cancelled or removed, and both say so", async () => {
  removeBooking(farmDatabase(), 2);
  const gone = ["refused", "this booking is not on the farm"];
  expect(told(await changeStatus(FRESH, formOf({ bookingId: "2", status: "cancelled" })))).toEqual(gone);
  expect(told(await deleteBooking(FRESH, formOf({ bookingId: "2" })))).toEqual(gone);
});

test("a status that is none is refused, and the booking keeps its own", async () => {
  const before = revision(farmDatabase());
  expect((await changeStatus(FRESH, formOf({ bookingId: "1", status: "wished for" }))).outcome).toBe("refused");
  expect(revision(farmDatabase())).toBe(before);
});

test("a bed of a what-if that was removed meanwhile is not turned, and the page says why", async () => {
  const made = putWhatIf(farmDatabase(), { name: "Gone soon", seasonYear: 2027, changes: [] });
  if (!made.ok) throw new Error("the what-if was not made");
  const form = { whatIfId: String(made.result), bed: "1 kept" };
  removeWhatIf(farmDatabase(), made.result);
  const gone = ["refused", "this what-if was removed meanwhile: undo that, or make a new one"];
  expect(told(await toggleBed(FRESH, formOf(form)))).toEqual(gone);
  expect(told(await takeChangeOut(FRESH, formOf({ ...form, index: "0", shown: "" })))).toEqual(gone);
});

test("a bed turned to a future that is none is refused", async () => {
  const made = putWhatIf(farmDatabase(), { name: "Kept", seasonYear: 2027, changes: [] });
  if (!made.ok) throw new Error("the what-if was not made");
  const answer = await toggleBed(FRESH, formOf({ whatIfId: String(made.result), bed: "1 burnt" }));
  expect(answer.outcome).toBe("refused");
});

test("a planting that was removed meanwhile is neither kept nor dug, and the page says why", async () => {
  const answer = await keepOrDig(FRESH, formOf({ plantingId: "99", treatment: "kept-in-ground" }));
  expect(told(answer)).toEqual(["refused", "this planting is no longer on the farm"]);
});

test("a save that fails says so, and gives back all that was typed", async () => {
  const logged = vi.spyOn(console, "error").mockImplementation(() => {});
  const typed = { bedId: "1", name: "Renamed", lengthMetres: "50", widthMetres: "4", note: "kept" };
  farmDatabase().$client.pragma("query_only = ON");
  const answer = await saveBed(FRESH, formOf(typed));
  farmDatabase().$client.pragma("query_only = OFF");
  expect(answer.outcome).toBe("refused");
  expect(answer.problems[0].message).toContain("cannot be written");
  expect(answer.typed).toEqual(Object.fromEntries(Object.entries(typed).map(([name, text]) => [name, [text]])));
  expect(logged).toHaveBeenCalledOnce();
  logged.mockRestore();
  expect((await saveBed(FRESH, formOf(typed))).outcome).toBe("saved");
});

test("a booking with a piece whose recipe is gone is refused at that piece", async () => {
  const booking = typedBooking({ pieces: [{ recipeId: 99, pieceCount: "3", colours: "" }] });
  const answer = await saveBooking(FRESH, sentBooking(booking));
  expect(answer.problems).toEqual([{ place: "pieces[0].recipeId", message: "this recipe is not on the farm" }]);
});

test("a confirmed booking is promised what the plan covers of it as it is saved, and what that is no longer so is lowered by its own button", async () => {
  const booking = typedBooking({ client: "Signed", status: "confirmed", stemLines: typedFocal("4") });
  const promisedOf = (client: string) => kept(farmDatabase()).bookings.find((row) => row.client === client)?.promises;
  const saved = saveBooking(FRESH, sentBooking(booking));
  await expect(saved).rejects.toThrow("NEXT_REDIRECT");
  expect(promisedOf("Signed")).toEqual(focal(4));
  const id = String(kept(farmDatabase()).bookings.find((row) => row.client === "Signed")?.id);
  done(putPromises(farmDatabase(), "promised more than there is", [{ bookingId: Number(id), promises: focal(9) }]));
  expect((await promiseCovered(FRESH, formOf({ bookingId: id }))).outcome).toBe("saved");
  expect(promisedOf("Signed")).toEqual(focal(4));
  expect((await changeStatus(FRESH, formOf({ bookingId: id, status: "cancelled" }))).outcome).toBe("saved");
  expect(promisedOf("Signed")).toEqual([]);
  expect((await promiseCovered(FRESH, formOf({ bookingId: id }))).problems[0].message).toContain(
    "only a confirmed booking",
  );
});

test("a planting that can hardly be is met with a word at its field, and saved once she says that it is meant", async () => {
  const fields = {
    plantingId: "",
    bedId: "1",
    varietyId: "1",
    seasonYear: "2027",
    treatment: "field",
    plantedOn: "2027-05-20",
    plantCount: "900000",
    aliveShare: "95",
    gradeOutShare: "10",
  };
  const before = revision(farmDatabase());
  const doubted = await savePlanting(FRESH, formOf(fields));
  expect(doubted.outcome).toBe("refused");
  expect(doubted.problems.map(({ place }) => place)).toContain("plantCount");
  expect(doubted.problems.at(-1)).toEqual({ place: "isMeant", message: "or tick here, and save it as it stands" });
  expect(revision(farmDatabase())).toBe(before);
  const meant = await savePlanting(FRESH, formOf({ ...fields, isMeant: "yes" }));
  expect(told(meant)).toEqual(["saved"]);
});

test("a planting saved without a share graded out leaves it to the curve, and one with 0 % says that none is", async () => {
  const fields = {
    ...{ plantingId: "", bedId: "1", varietyId: "1", seasonYear: "2027", treatment: "field", plantedOn: "2027-05-21" },
    ...{ plantCount: "40", aliveShare: "95" },
  };
  const shareOf = async (gradeOutShare: string) => {
    expect(told(await savePlanting(FRESH, formOf({ ...fields, gradeOutShare })))).toEqual(["saved"]);
    return kept(farmDatabase()).plantings.at(-1)?.gradeOutShare;
  };
  expect([await shareOf(""), await shareOf("0"), await shareOf("12")]).toEqual([null, 0, 0.12]);
  expect((await savePlanting(FRESH, formOf({ ...fields, gradeOutShare: "112" }))).problems).toEqual([
    { place: "gradeOutShare", message: expect.stringMatching(/100/) },
  ]);
});

test("an action that a script calls with no form at all answers as for an empty one", async () => {
  const empty = told(await saveBed(FRESH, new FormData()));
  for (const odd of [null, undefined, "x", 1, [], {}])
    expect(told(await saveBed(FRESH, odd as unknown as FormData))).toEqual(empty);
});
