import { describe, expect, test, vi } from "vitest";
import { addBooking } from "#db/write/bookings";
import { addDays } from "#lib/domain/day";
import type { Status } from "#lib/domain/words";
import { changeStatus, saveBooking } from "../../../app/bookings/actions";
import { giveLapses, reopenBooking } from "../../../app/bookings/lapses/lapse-actions";
import { today } from "../../../app/clock";
import { holdEnquiry } from "../../../app/enquiry/actions";
import { farmDatabase } from "../../../app/load";
import { FRESH } from "../../../app/ui/form-state";
import { done, kept } from "../../db/kept-farm";
import { booking, day, focal } from "../../small-farm";
import { farmForActions } from "../farm-for-actions";
import { formOf } from "../form-of";
import { sentBooking, typedBooking, typedFocal } from "../typed-booking";

/** The server's own actions on a real farm; only the framework’s cache and cookies, which live inside its server, are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions("2027-03-01");

const lapseOf = (client: string) => kept(farmDatabase()).bookings.find((row) => row.client === client)?.lapsesAfter;
const added = (client: string, given: Partial<ReturnType<typeof booking>>) => {
  const { id: _, ...draft } = booking({ id: 1, client, stemLines: focal(4), ...given });
  return String(done(addBooking(farmDatabase(), draft)).result);
};

describe("an enquiry or a hold that lapsed", () => {
  test("is reopened with a tap, for as many days as the farm keeps such a one, and only then", async () => {
    const id = added("Gone quiet", { status: "held", lapsesAfter: day("2027-02-20") });
    expect((await reopenBooking(FRESH, formOf({ bookingId: id }))).outcome).toBe("saved");
    expect(lapseOf("Gone quiet")).toBe(addDays(today(), 30));
    const again = await reopenBooking(FRESH, formOf({ bookingId: id }));
    expect(again.problems[0].message).toBe("this booking is not on the farm, or has not lapsed");
  });

  test("whose event is over is not reopened, and the answer says what mends it", async () => {
    const id = added("Over", { status: "enquiry", eventOn: day("2027-02-13"), lapsesAfter: day("2027-02-10") });
    const answer = await reopenBooking(FRESH, formOf({ bookingId: id }));
    expect(answer.problems[0].message).toBe("its event is over: move it to another day first");
  });

  test("comes back from a cancelled booking with a day by the farm's habit, 14 from today", async () => {
    const id = added("Back again", { status: "cancelled" });
    expect((await changeStatus(FRESH, formOf({ bookingId: id, status: "enquiry" }))).outcome).toBe("saved");
    expect(lapseOf("Back again")).toBe(addDays(today(), 14));
  });
});

test("enquiries and holds of a season that have no day are given one, the others keep theirs", async () => {
  added("No day", { status: "enquiry" });
  added("Soon", { status: "held", eventOn: addDays(today(), 9) });
  added("Own day", { status: "held", lapsesAfter: day("2027-05-05") });
  added("Signed", { status: "confirmed" });
  expect((await giveLapses(FRESH, formOf({ seasonYear: "2027" }))).outcome).toBe("saved");
  expect(["No day", "Soon", "Own day", "Signed"].map(lapseOf)).toEqual([
    addDays(today(), 14),
    addDays(today(), 9),
    "2027-05-05",
    null,
  ]);
  const again = await giveLapses(FRESH, formOf({ seasonYear: "2027" }));
  expect(again.problems[0].message).toBe("every enquiry and hold has its day already");
});

describe("the day that is typed", () => {
  const typed = (lapsesAfter: string, status: Status = "enquiry") => {
    const asked = { client: `Typed ${lapsesAfter} ${status}`, status, lapsesAfter, stemLines: typedFocal("4") };
    return saveBooking(FRESH, sentBooking(typedBooking(asked)));
  };

  test("is kept; none is none, and what is confirmed has none", async () => {
    for (const [asked, status] of [
      ["2027-04-01", "held"],
      ["", "enquiry"],
      ["2027-04-01", "confirmed"],
    ] as const)
      await expect(typed(asked, status)).rejects.toThrow("NEXT_REDIRECT");
    expect(["Typed 2027-04-01 held", "Typed  enquiry", "Typed 2027-04-01 confirmed"].map(lapseOf)).toEqual([
      "2027-04-01",
      null,
      null,
    ]);
  });

  test("is met with a word at its field when it is past or no day", async () => {
    const answers = await Promise.all([typed("2027-02-28"), typed("next week")]);
    expect(answers.map(({ problems }) => problems.map(({ place }) => place))).toEqual([
      ["lapsesAfter"],
      ["lapsesAfter"],
    ]);
    expect(answers[0].problems[0].message).toContain("past");
  });

  test("of a hold on the phone is the day after which it lapses", async () => {
    const asked = { stemCount: "3", colours: "cream", role: "focal", eventOn: "2027-06-12" };
    const held = holdEnquiry(FRESH, formOf({ ...asked, client: "On the phone", heldUntil: "2027-03-20" }));
    await expect(held).rejects.toThrow("NEXT_REDIRECT");
    expect(lapseOf("On the phone")).toBe("2027-03-20");
  });
});
