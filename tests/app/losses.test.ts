import { describe, expect, test, vi } from "vitest";
import { winterProposals } from "#lib/plan/learning/review/winter-proposals";
import { noteLoss, takeBackLoss } from "../../app/beds/losses/loss-actions";
import { takeWinterProposal } from "../../app/farm/year-end/year-end-actions";
import { farmDatabase } from "../../app/load";
import { noteFrost, takeBackFrost } from "../../app/today/frost-actions";
import { FRESH } from "../../app/ui/form-state";
import { kept } from "../db/kept-farm";
import { farmForActions } from "./farm-for-actions";
import { formOf } from "./form-of";

/** What is seen of plants and frost, written down as a grower types it, on a real farm; only the framework’s cache and cookies are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions("2027-10-08");

const note = (given: Record<string, string>) => {
  const [{ bedId, varietyId }] = kept(farmDatabase()).plantings;
  const filled = { seenOn: "2027-10-07", cause: "voles", plantsBefore: "40", plantsLeft: "10", ...given };
  return noteLoss(FRESH, formOf({ bedId: String(bedId), varietyId: String(varietyId), ...filled }));
};
const losses = () =>
  kept(farmDatabase()).losses.map(({ seenOn, cause, plantsBefore, plantsLeft }) => [
    seenOn,
    cause,
    plantsBefore,
    plantsLeft,
  ]);

describe("plants that were lost", () => {
  test("are written down as typed, all of them by one button whatever stands in the field, and taken back", async () => {
    expect((await note({})).outcome).toBe("saved");
    expect((await note({ noneLeft: "yes", plantsLeft: "", cause: "hail or wind", seenOn: "7 Oct 2027" })).outcome).toBe(
      "saved",
    );
    expect(losses()).toEqual([
      ["2027-10-07", "voles", 40, 10],
      ["2027-10-07", "hail or wind", 40, 0],
    ]);
    for (const { id } of kept(farmDatabase()).losses)
      expect((await takeBackLoss(FRESH, formOf({ lossId: String(id) }))).outcome).toBe("saved");
    expect(losses()).toEqual([]);
  });

  test("are refused at their field where more are left than there were, none is told, half a plant, or on a day to come", async () => {
    const wrong = async (given: Record<string, string>) => (await note(given)).problems.map(({ place }) => place);
    expect(await wrong({ plantsLeft: "41" })).toEqual(["plantsLeft"]);
    expect(await wrong({ plantsLeft: "" })).toEqual(["plantsLeft"]);
    expect(await wrong({ plantsLeft: "1.5" })).toEqual(["plantsLeft"]);
    expect(await wrong({ plantsBefore: "0", plantsLeft: "0" })).toEqual(["plantsBefore"]);
    expect(await wrong({ seenOn: "2027-10-09" })).toEqual(["seenOn"]);
    expect(await wrong({ seenOn: "2027-10-09", plantsLeft: "41" })).toEqual(["plantsLeft", "seenOn"]);
    expect(losses()).toEqual([]);
  });
});

test("what counts of clumps teach of the winter is taken if it is still proposed, and only once", async () => {
  expect(
    (await note({ cause: "winter in the ground", seenOn: "2027-04-20", plantsBefore: "96", plantsLeft: "96" })).outcome,
  ).toBe("saved");
  const [{ is }] = winterProposals(kept(farmDatabase()));
  const take = (share: number) => takeWinterProposal(FRESH, formOf({ part: "ground", is: String(share) }));
  expect((await take(is - 0.01)).outcome).toBe("refused");
  expect((await take(is)).outcome).toBe("saved");
  expect(kept(farmDatabase()).farm.winter.winterSurvivalShare).toBe(is);
  expect((await take(is)).outcome).toBe("refused");
});

describe("a killing frost", () => {
  const frosts = () => kept(farmDatabase()).farm.killingFrosts;
  const froze = (frostOn: string) => noteFrost(FRESH, formOf({ frostOn }));

  test("is written down once a year, in place of one told before, and taken back", async () => {
    expect((await froze("2026-10-20")).outcome).toBe("saved");
    expect((await froze("2027-10-05")).outcome).toBe("saved");
    expect((await froze("2027-10-08")).outcome).toBe("saved");
    expect(frosts()).toEqual(["2026-10-20", "2027-10-08"]);
    expect((await takeBackFrost(FRESH, formOf({}))).outcome).toBe("saved");
    expect(frosts()).toEqual(["2026-10-20"]);
    expect((await takeBackFrost(FRESH, formOf({}))).outcome).toBe("refused");
  });

  test("is refused on a day to come, of spring, or that is none", async () => {
    const before = frosts();
    for (const wrong of ["2027-10-09", "2027-05-01", "", "soon"])
      expect((await froze(wrong)).problems.map(({ place }) => place)).toEqual(["frostOn"]);
    expect(frosts()).toEqual(before);
  });
});
