import { describe, expect, test } from "vitest";
import { parseDay } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import { eventDaysOn } from "#lib/plan/road/event-days-on";
import { deliveriesOf } from "#lib/plan/road/orders";
import {
  benchDaysInWords,
  daysBeforeInWords,
  eventDaysInWords,
  eventDaysOfSaturday,
} from "#lib/plan/words/event-days-words";
import { cutTooEarlyInWords } from "#lib/plan/words/unheld-words";
import { booking, day, farm, focal, snapshot } from "../../small-farm";

const SATURDAY = parseDay("2027-06-12");
const HABIT = { leadDays: 2, wornLaterDays: 1, designDays: 1, deliverDays: 0 };

describe("the days of an event in words", () => {
  test("[M12] stand in the order in which they come, what is worn beside the rest only where it differs", () => {
    expect(eventDaysInWords(SATURDAY, eventDaysOf(HABIT))).toBe(
      "cut by Thu 10 Jun, what is worn by Fri 11 Jun; design Fri 11 Jun; deliver Sat 12 Jun",
    );
    expect(eventDaysInWords(SATURDAY, eventDaysOf({ ...HABIT, wornLaterDays: 0 }))).toBe(
      "cut by Thu 10 Jun; design Fri 11 Jun; deliver Sat 12 Jun",
    );
  });

  test("are counted where no day is chosen yet, and are weekdays where a farm's habit is told", () => {
    const days = eventDaysOf({ ...HABIT, wornLaterDays: 0 });
    expect(eventDaysInWords(null, days)).toBe("cut by two days before; design the day before; deliver on the day");
    expect(eventDaysOfSaturday({ ...HABIT, leadDays: 9, wornLaterDays: 0 })).toBe(
      "cut by nine days before; design Friday; deliver Saturday",
    );
    expect([0, 1, 14].map(daysBeforeInWords)).toEqual(["on the day", "the day before", "14 days before"]);
  });

  test("on a label: when it is made up, and when delivered if not on the event's own day", () => {
    const of = (given: object) => benchDaysInWords(booking({ id: 1, eventOn: SATURDAY, ...given }), HABIT);
    expect(of({})).toBe("design Fri 11 Jun");
    expect(of({ deliverDays: 1 })).toBe("design Thu 10 Jun, deliver Fri 11 Jun");
  });

  test("one crop that keeps too short for an own last cut is named, and so are two", () => {
    expect(cutTooEarlyInWords([{ name: "Cosmos" }], 5)).toBe(
      "None of the cosmos can serve it: it keeps for less than the five days from its last cut to the event.",
    );
    expect(cutTooEarlyInWords([{ name: "Cosmos" }, { name: "Dahlia" }], 5)).toMatch(/^None of the cosmos and dahlia/);
  });
});

describe("what a day is to the farm's events", () => {
  const order = {
    ...{ id: 1, buyer: "Fern", kind: "florist" as const, weekday: 6, cropId: null, colours: [], stemCents: 100 },
    ...{ firstOn: day("2027-06-01"), lastOn: day("2027-06-30"), askedCount: 10 },
  };
  const given = snapshot({
    farm: farm(HABIT),
    bookings: [
      booking({ id: 1, client: "Ash", eventOn: SATURDAY, stemLines: focal(1) }),
      booking({ id: 2, client: "Elm", eventOn: SATURDAY, deliverDays: 1, stemLines: focal(1) }),
      booking({ id: 3, client: "Oak", eventOn: day("2027-06-13"), leadDays: 3, stemLines: focal(1) }),
      booking({ id: 4, client: "Yew", eventOn: SATURDAY, status: "enquiry", stemLines: focal(1) }),
      booking({ id: 5, client: "Box", eventOn: SATURDAY, status: "cancelled", stemLines: focal(1) }),
    ],
    standingOrders: [
      { ...order, role: "focal" as const, recipeId: null },
      { ...order, id: 2, buyer: "Sage", role: null, recipeId: 1 },
    ],
  });
  const on = (text: string) => {
    const { lastCut, design, deliver } = eventDaysOn(given, day(text));
    const names = (of: typeof design) => of.map(({ client }) => client).join(" ");
    return [names(lastCut), names(design), names(deliver)];
  };

  test("[M12] [N5] Thursday is Ash's last cut and Elm's design, Friday Ash's design and Elm's delivery, Saturday all others'; an enquiry has none", () => {
    expect(on("2027-06-09")).toEqual(["Elm", "", ""]);
    expect(on("2027-06-10")).toEqual(["Ash Oak", "Elm", ""]);
    expect(on("2027-06-11")).toEqual(["", "Ash Sage", "Elm"]);
    expect(on("2027-06-12")).toEqual(["", "Oak", "Ash Fern Sage"]);
  });

  test("[SO1] standing orders in stems are delivered and not made up", () => {
    const [stems] = deliveriesOf(given.standingOrders, [2027]);
    expect(benchDaysInWords(stems.booking, HABIT)).toBe("");
  });
});
