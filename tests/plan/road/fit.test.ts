import { describe, expect, test } from "vitest";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { AGE_CENTS, ageCents, NEXT_COLOUR_CENTS, OTHER_CROP_CENTS, OTHER_ROLE_CENTS } from "#lib/plan/road/fit";
import { Fits } from "#lib/plan/road/fits";
import { type Need, needs } from "#lib/plan/road/needs";
import { booking, crop, focal, snapshot, variety } from "../../small-farm";

const needOf = (line: Parameters<typeof focal>[1], given: Parameters<typeof booking>[0] = { id: 1 }) =>
  needs(snapshot({ bookings: [booking({ ...given, stemLines: focal(10, line) })] }), 2027)[0];
/** What the fit costs as the match finds it; null where the variety may not serve the need. */
const fitCents = (need: Need, ...[variety, crop]: [Variety, Crop]): number | null =>
  new Fits([{ variety, crop, days: [], stems: [], lots: [] }]).of(need).cents[0] ?? null;
const cream = variety({ id: 1, cropId: 1, colour: "cream" });
const rose = crop({ id: 1 });

describe("what a stem may serve", () => {
  test("[M2] a crop that cannot take the role never serves it", () => {
    expect(fitCents(needOf({ role: "filler" }), cream, rose)).toBe(null);
  });

  test("[M2] a crop that is unacceptable to the booking never serves it, even when it is named", () => {
    expect(fitCents(needOf({ cropId: 1 }, { id: 1, unacceptableCropIds: [1] }), cream, rose)).toBe(null);
  });

  test("[M2] a colour that is unacceptable to the booking never serves it, whether its line takes any colour or names it", () => {
    const noWhite = { id: 1, unacceptableColours: ["white" as const] };
    const white = variety({ id: 2, cropId: 1, colour: "white" });
    expect(fitCents(needOf({}, noWhite), white, rose)).toBe(null);
    expect(fitCents(needOf({}, noWhite), cream, rose)).toBe(0);
    expect(fitCents(needOf({ colours: ["white", "cream"] }, noWhite), white, rose)).toBe(null);
    expect(fitCents(needOf({ colours: ["white", "cream"] }, noWhite), cream, rose)).toBe(NEXT_COLOUR_CENTS);
  });

  test("[M2] another crop than the named one serves unless no other will do", () => {
    expect(fitCents(needOf({ cropId: 2 }), cream, rose)).toBe(OTHER_CROP_CENTS);
    expect(fitCents(needOf({ cropId: 2, cropOnly: true }), cream, rose)).toBe(null);
    expect(fitCents(needOf({ cropId: 1, cropOnly: true }), cream, rose)).toBe(0);
  });

  test("[M2] any colour will do where none is listed; where some are, only those, the first best", () => {
    expect(fitCents(needOf({}), cream, rose)).toBe(0);
    expect(fitCents(needOf({ colours: ["blush", "white", "cream"] }), cream, rose)).toBe(2 * NEXT_COLOUR_CENTS);
    expect(fitCents(needOf({ colours: ["blush"] }), cream, rose)).toBe(null);
  });

  test("what is less than best adds up: another crop, not its usual role, second colour", () => {
    const filler = crop({ id: 1, roles: ["filler", "focal"], usualRole: "filler" });
    const cents = fitCents(needOf({ cropId: 2, colours: ["blush", "cream"] }), cream, filler);
    expect(cents).toBe(OTHER_CROP_CENTS + OTHER_ROLE_CENTS + NEXT_COLOUR_CENTS);
  });
});

describe("what age costs", () => {
  test("[M3] held from the lead days (2) to the whole hold (6), a stem costs 0, 2, 4, 6, 8 cents", () => {
    expect([2, 3, 4, 5, 6].map((heldDays) => ageCents(heldDays, 2, 6))).toEqual([0, 2, 4, 6, 8]);
  });

  test("[M3] a day older is never cheaper, and nothing passes the age cost, whatever the lead and the hold", () => {
    for (let leadDays = 0; leadDays <= 14; leadDays++)
      for (let holdDays = 0; holdDays <= 120; holdDays += 0.5) {
        let before = 0;
        for (let heldDays = leadDays; heldDays <= Math.max(holdDays, leadDays); heldDays++) {
          const cents = ageCents(heldDays, leadDays, holdDays);
          if (cents < before || cents > AGE_CENTS) expect([leadDays, holdDays, heldDays, cents]).toBe("in order");
          before = cents;
        }
      }
    expect(ageCents(120, 0, 120)).toBe(AGE_CENTS);
  });
});
