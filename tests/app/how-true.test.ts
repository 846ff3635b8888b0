import { describe, expect, test, vi } from "vitest";
import { noteBuds } from "../../app/beds/buds/bud-actions";
import { GET } from "../../app/farm/year-end/how-true/csv/route";
import { POST } from "../../app/farm/year-end/how-true/forecasts/route";
import { farmDatabase } from "../../app/load";
import { pool } from "../../app/threads/pool";
import { FRESH } from "../../app/ui/form-state";
import { recordCuts } from "../db/record-cuts";
import { day } from "../small-farm";
import { farmForActions } from "./farm-for-actions";
import { formOf } from "./form-of";

/** How true a season was, asked as its page asks, of a real farm and a real thread; only the framework’s cache and cookies are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions("2027-11-20");

const ask = (body: unknown) =>
  POST(
    new Request("http://127.0.0.1/farm/year-end/how-true/forecasts", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    }),
  );

/** What was told of a season, line by line. */
const told = async (seasonYear: number) =>
  (await (await ask({ seasonYear })).text())
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));

const csv = async (query: string) =>
  (await (await GET(new Request(`http://127.0.0.1/farm/year-end/how-true/csv${query}`))).text()).split("\r\n");

describe("how true a season was", () => {
  test("has no crop where nothing was recorded", async () => {
    expect((await told(2027)).at(-1)).toMatchObject({ answer: { seasonYear: 2027, crops: [] } });
    expect(await csv("")).toHaveLength(2);
  });

  test("is told of what was typed on the walk and cut, with its progress, once for all who ask", async () => {
    const look = { bedId: "1", varietyId: "1", lookedOn: "10 June 2027", sign: "first bloom", daysToCut: "" };
    expect((await noteBuds(FRESH, formOf(look))).outcome).toBe("saved");
    const cut = { bedId: 1, varietyId: 1, bookingId: null, goodStems: null, restStands: false } as const;
    recordCuts(farmDatabase(), [{ ...cut, cutOn: day("2027-06-12"), stemsCut: 12, stemsAsked: 15 }]);
    const [first, second] = await Promise.all([told(2027), told(2027)]);
    expect(first.map((line) => Object.keys(line)[0]).join(" ")).toMatch(/^workId( progress)* answer$/);
    expect(first.at(-1)).toMatchObject({
      answer: { crops: [{ said: { winter: { timing: { daysLate: 3 }, stems: { cameStems: 12, saidStems: 15 } } } }] },
    });
    expect(second.at(-1)).toEqual(first.at(-1));
    const again = vi.spyOn(pool(), "start");
    expect(await csv("?season=2027")).toEqual([
      "crop,forecast_made,plantings,first_cuts,mean_first_cut,mean_first_cut_said,days_late,pickings,stems,stems_said,stems_off",
      ...["winter", "spring", "four weeks ahead"].map((made) => `Crop 1,${made},2,1,2027-06-10,2027-06-07,3,1,12,15,3`),
      "",
    ]);
    expect(again).not.toHaveBeenCalled();
    again.mockRestore();
  });

  test("a question without a season, or of a year that is none, is refused in words; an address with an odd season shows the last that was recorded", async () => {
    for (const body of [{}, { seasonYear: "soon" }, { seasonYear: 12.5 }, null]) {
      const refused = await ask(body);
      expect([refused.status, await refused.json()]).toEqual([400, { problem: "name a season" }]);
    }
    expect(await csv("?season=soon")).toEqual(await csv("?season=2027"));
  });
});
