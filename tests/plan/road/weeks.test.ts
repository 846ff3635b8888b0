import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { addDays, isoWeekOf, mondayOf, toDay } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { ROLES } from "#lib/domain/words";
import { checkMatch } from "#lib/plan/road/match";
import { provenPlan } from "../../proven-plan";
import { booking, day, focal, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { lastCutBySpec } from "./event-days-by-spec";
import { keptDays } from "./kept-days";
import { directMatch } from "./match-by-arcs";

const weeksOf = (given: Partial<Snapshot>) => provenPlan(snapshot(given), 2027).weeks;
const focalOf = (roles: ReturnType<typeof weeksOf>[number]["roles"]) => roles.filter(({ role }) => role === "focal")[0];

describe("a season by weeks", () => {
  test("[G2] stems cut in week 23 and one event in week 26: four weeks, the empty ones told too", () => {
    const list = weeksOf({ bookings: [booking({ id: 7, eventOn: day("2027-07-03"), stemLines: focal(10) })] });
    expect(list.map(({ week, monday, bookingIds }) => [week, monday, bookingIds])).toEqual([
      ["2027-W23", "2027-06-07", []],
      ["2027-W24", "2027-06-14", []],
      ["2027-W25", "2027-06-21", []],
      ["2027-W26", "2027-06-28", [7]],
    ]);
  });

  test("[G2] of 70 stems, Saturday the 12th can be served from 9 and 10 June: 30 in reach, 20 asked and covered", () => {
    const [week] = weeksOf({ bookings: [booking({ id: 1, stemLines: focal(20) })] });
    const asked = { role: "focal", needStems: 20, coveredStems: 20, shortStems: 0, reachableStems: 30 };
    expect(focalOf(week.roles)).toEqual(asked);
    expect(week.gapIndexes).toEqual([]);
  });

  test("[G2] a Friday and a Saturday event share their stems: each stem in reach is counted once", () => {
    /** Friday the 11th reaches 7 and 9 June, Saturday the 12th 9 and 10 June: 10 + 20 + 10. */
    const [week] = weeksOf({
      bookings: [
        booking({ id: 1, eventOn: day("2027-06-11"), stemLines: focal(10) }),
        booking({ id: 2, eventOn: day("2027-06-12"), stemLines: focal(50) }),
      ],
    });
    const asked = { role: "focal", needStems: 60, coveredStems: 40, shortStems: 20, reachableStems: 40 };
    expect(focalOf(week.roles)).toEqual(asked);
    expect(week.gapIndexes).toHaveLength(1);
  });

  test("[G2] an event on a Sunday belongs to the week before the Monday that follows it", () => {
    const list = weeksOf({
      plantings: [],
      bookings: [booking({ id: 1, eventOn: day("2027-06-13"), stemLines: focal(1) })],
    });
    expect(list.map(({ week }) => week)).toEqual(["2027-W23"]);
  });

  test("a farm without stems and without bookings has no weeks", () => {
    expect(weeksOf({ plantings: [] })).toEqual([]);
  });
});

function weeksHold(given: Snapshot): void {
  const { weeks, match, gaps } = provenPlan(given, 2027);
  expect(checkMatch(match)).toEqual([]);
  weeks.forEach(({ week, monday, roles }, index) => {
    expect(mondayOf(monday)).toBe(monday);
    expect(isoWeekOf(monday)).toBe(week);
    if (index > 0) expect(monday).toBe(addDays(weeks[index - 1].monday, 7));
    expect(roles.map(({ role }) => role)).toEqual([...ROLES]);
    expect(roles.every((row) => row.coveredStems + row.shortStems === row.needStems)).toBe(true);
  });
  const total = (of: (role: (typeof weeks)[number]["roles"][number]) => number) =>
    weeks.flatMap(({ roles }) => roles).reduce((sum, role) => sum + of(role), 0);
  expect(total(({ needStems }) => needStems)).toBe(match.needs.reduce((sum, { stems }) => sum + stems, 0));
  expect(total(({ shortStems }) => shortStems)).toBe(match.shortStems.reduce((sum, stems) => sum + stems, 0));
  expect(total(({ coveredStems }) => coveredStems)).toBe(match.servings.reduce((sum, { stems }) => sum + stems, 0));
  expect(weeks.flatMap(({ gapIndexes }) => gapIndexes).sort((a, b) => a - b)).toEqual([...gaps.keys()]);
  const mondays = new Set<string>(weeks.map(({ monday }) => monday));
  const cutDays = match.supplies.flatMap(({ days }) => days);
  expect(cutDays.filter((cutDay) => !mondays.has(mondayOf(toDay(cutDay))))).toEqual([]);
}

describe("the weeks of many farms", () => {
  test("[G2] in 200 farms weeks follow on each other and sum to the match", () => {
    fc.assert(fc.property(anyFarm, weeksHold), anySeed);
  });

  test("[G2] so too on 100 seeded farms of 12 beds and 10 bookings", () => {
    for (let seed = 1; seed <= 100; seed++) weeksHold(seededFarm(seed, { bedCount: 12, bookingCount: 10 }));
  });

  test("in 200 farms stems in reach of a week's role are the lots that reach any event of the week, each once", () => {
    fc.assert(
      fc.property(anyFarm, (given) => {
        const { weeks, match, forecast } = provenPlan(given, 2027);
        const { lots } = directMatch(given, forecast.plantings, match.needs);
        for (const { monday, bookingIds, roles } of weeks) {
          const asked = match.needs.filter(({ booking: { id } }) => bookingIds.includes(id));
          if (asked.length === 0) continue;
          for (const { role, reachableStems } of roles) {
            const inReach = lots.filter(
              ({ crop, day: cutDay }) =>
                crop.roles.includes(role) &&
                asked.some(({ eventDay }) => {
                  const heldDays = eventDay - cutDay;
                  const ofDay = asked.filter((need) => need.eventDay === eventDay);
                  const ofRole = ofDay.filter((need) => need.role === role);
                  const leads = ofRole.length
                    ? ofRole.map(({ booking, asks }) => lastCutBySpec(given.farm, booking, asks))
                    : ofDay.map(({ booking }) => lastCutBySpec(given.farm, booking, []));
                  return heldDays >= Math.min(...leads) && heldDays <= keptDays(crop, given)[1];
                }),
            );
            expect(
              inReach.reduce((sum, { stems }) => sum + stems, 0),
              `${monday} ${role}`,
            ).toBe(reachableStems);
          }
        }
      }),
      anySeed,
    );
  });
});
