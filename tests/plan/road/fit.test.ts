import { describe, expect, test } from "vitest";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import type { Status } from "#lib/domain/words";
import { AGE_CENTS, ageCents, NEXT_COLOUR_CENTS, OTHER_CROP_CENTS, OTHER_ROLE_CENTS } from "#lib/plan/road/fit";
import { Fits } from "#lib/plan/road/fits";
import { type Need, needs } from "#lib/plan/road/needs";
import { stretchCentsFinder } from "#lib/plan/road/stretch-cents";
import { booking, crop, farm, focal, snapshot, variety } from "../../small-farm";

const needOf = (line: Parameters<typeof focal>[1], given: Parameters<typeof booking>[0] = { id: 1 }) =>
  needs(snapshot({ bookings: [booking({ ...given, stemLines: focal(10, line) })] }), 2027)[0];
/** What the fit costs as the match finds it; null where the variety may not serve the need. */
const fitCents = (need: Need, ...[variety, crop]: [Variety, Crop]): number | null =>
  new Fits([{ variety, crop, hold: keptFor(4), days: [], stems: [], lots: [] }]).of(need).cents[0] ?? null;
/** A hold of so many days, and a stretch to so many. */
const keptFor = (days: number, stretchDays = days) => ({ days, stretchDays });
/** What a whole stretch of a stem of that price costs a claim, where focal stems are bought in at another price. */
const stretched = (stemCents: number, focalCents: number) => (status: Status) =>
  stretchCentsFinder(farm(), { middleCentsOf: (role) => (role === "focal" ? focalCents : 9999) })(
    crop({ id: 1, roles: ["accent", "focal"], buyInCents: { count: stemCents, mark: "own", source: null } }),
    status,
  );
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
    expect([2, 3, 4, 5, 6].map((heldDays) => ageCents(heldDays, 2, keptFor(6), AGE_CENTS))).toEqual([0, 2, 4, 6, 8]);
  });

  test("[M3] a $5 dahlia held 3 days keeps as good as fresh; at a stretch of 5 the fourth day costs a booking half of $2.50, the fifth all of it", () => {
    const whole = stretched(500, 300)("confirmed");
    expect(whole).toBe(250);
    expect([2, 3, 4, 5].map((heldDays) => ageCents(heldDays, 2, keptFor(3, 5), whole))).toEqual([0, 8, 129, 250]);
    expect([2, 3, 4, 5].map((heldDays) => ageCents(heldDays, 2, keptFor(1, 5), whole))).toEqual([69, 129, 190, 250]);
  });

  test("[M3] a stretch costs a claim what it weighs, always 26 cents less than a stem short of any role it can take, and never less than the whole hold", () => {
    const claims = ["confirmed", "held", "enquiry"] as const;
    expect(claims.map(stretched(500, 300))).toEqual([250, 150, 64]);
    expect(claims.map(stretched(500, 200))).toEqual([174, 94, 34]);
    expect(claims.map(stretched(10, 300))).toEqual([8, 8, 8]);
    expect(claims.map(stretched(500, 20))).toEqual([8, 8, 8]);
  });

  test("[M3] a day older is never cheaper, and nothing passes the cost of the whole hold, or of the whole stretch past it", () => {
    for (let leadDays = 0; leadDays <= 14; leadDays++)
      for (let holdDays = 0; holdDays <= 120; holdDays += 1.5)
        for (const stretchDays of [holdDays, holdDays + 0.5, holdDays + 4]) {
          const hold = { days: holdDays, stretchDays };
          let before = 0;
          for (let heldDays = leadDays; heldDays <= stretchDays; heldDays++) {
            const cents = ageCents(heldDays, leadDays, hold, 120);
            const most = heldDays <= holdDays ? AGE_CENTS : 120;
            if (cents < before || cents > most) expect([leadDays, hold, heldDays, cents]).toBe("in order");
            before = cents;
          }
        }
    expect(ageCents(120, 0, keptFor(120), AGE_CENTS)).toBe(AGE_CENTS);
    expect(ageCents(124, 0, keptFor(120, 124), 120)).toBe(120);
  });
});
