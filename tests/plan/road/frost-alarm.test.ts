import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay, toDayNumber } from "#lib/domain/day";
import { weatherOfDays } from "#lib/domain/records/weather-day";
import { frostAlarm } from "#lib/plan/road/frost-alarm";
import { frostNight, isFrostWatch } from "#lib/plan/road/frost-night";
import { checkMatch } from "#lib/plan/road/match";
import { alarmInWords, coldNightInWords, coldNightTitle, tenderInWords } from "#lib/plan/words/frost-words";
import { bed, booking, crop, curve, day, farm, focal, snapshot } from "../../small-farm";
import { anySeed } from "../any-farm";
import { lastCutBySpec } from "./event-days-by-spec";
import { keptDays } from "./kept-days";
import { anyGarden, on } from "./lived-season";

const number = (text: string) => toDayNumber(day(text));

describe("frost is watched for", () => {
  const home = (given = {}) => snapshot({ farm: farm(given) });

  test("[T11] with an early date of 4 October and a median of the 18th: from 6 September to the 17th of October", () => {
    const isWatched = (today: string) => isFrostWatch(on(home(), today));
    expect(["2027-09-05", "2027-09-06", "2027-10-17", "2027-10-18"].map(isWatched)).toEqual([false, true, true, false]);
  });

  test("[T11] a low at the threshold sounds, one above it or behind today does not, and of two nights the first", () => {
    const typed = (coldNightOn: string, coldNightLowC: number) => ({ coldNightOn: day(coldNightOn), coldNightLowC });
    const today = number("2027-10-06");
    expect(frostNight(home(typed("2027-10-08", 2)), today)).toEqual({ morning: "2027-10-08", lowC: 2, isTyped: true });
    expect(frostNight(home(typed("2027-10-08", 2.1)), today)).toBeNull();
    expect(frostNight(home(typed("2027-10-05", -3)), today)).toBeNull();
    expect(frostNight(home({ ...typed("2027-10-08", 3), frostAlarmC: 4 }), today)?.lowC).toBe(3);
    const weather = weatherOfDays([
      { day: today - 1, highC: 9, lowC: -4 },
      { day: today + 1, highC: 12, lowC: 1 },
      { day: today + 3, highC: 12, lowC: 0 },
    ]);
    expect(frostNight({ ...home(), weather }, today)).toEqual({ morning: "2027-10-07", lowC: 1, isTyped: false });
    expect(frostNight({ ...home(typed("2027-10-07", 0)), weather }, today)?.isTyped).toBe(true);
    expect(frostNight({ ...home(typed("2027-10-09", 0)), weather }, today)?.isTyped).toBe(false);
  });

  test("a cold night is told with its degrees, its day and where it is known from", () => {
    const night = { morning: day("2027-10-08"), lowC: -2, isTyped: true };
    expect(coldNightInWords(night, "us")).toBe("28 °F on the morning of Fri 8 Oct, as you typed it");
    expect(coldNightTitle(farm({ coldNightOn: night.morning, coldNightLowC: -2 }))).toBe(
      "kept the forecast of 28 °F on the morning of Fri 8 Oct",
    );
    expect(coldNightTitle(farm())).toBe("took the forecast of a cold night out");
  });
});

/** Ten stems a day of a tender crop in the week of 7 June, cut on Monday (1 stem's day), Wednesday, Thursday and Saturday; 60 are wanted on the 12th and 14th. */
const tender = (given: Parameters<typeof snapshot>[0] = {}) =>
  snapshot({
    crops: [crop({ id: 1, name: "Dahlia", tender: true })],
    curves: [curve()],
    bookings: [
      booking({ id: 1, client: "Ivy", eventOn: day("2027-06-12"), stemLines: focal(20) }),
      booking({ id: 2, client: "Fern", eventOn: day("2027-06-14"), stemLines: focal(20) }),
    ],
    ...given,
  });

describe("what a frost takes, and what can be cut before it", () => {
  test("[T12] frost on Friday the 11th: Saturday's 20 open on Friday and Saturday, so that none of them is open on Thursday, and Fern loses what Wednesday and Thursday do not keep for her", () => {
    const plan = on(tender(), "2027-06-08");
    const alarm = frostAlarm(plan, number("2027-06-11"));
    expect(toDay(alarm.eve)).toBe("2027-06-10");
    expect(alarm.atRisk.map(({ booking: { client }, stems }) => [client, stems])).toEqual([["Fern", 20]]);
    // Wednesday and Thursday give 20 and 10: 20 are Ivy's, and 10 of those of Thursday keep until the 14th.
    expect(alarm.cutAhead.reduce((sum, { stems }) => sum + stems, 0)).toBe(30);
    expect(alarm.stillLost.map(({ booking: { client }, stems }) => [client, stems])).toEqual([["Fern", 10]]);
    expect(alarmInWords(alarm)).toMatch(
      /^20 tender stems for 1 booking would freeze\. Cut 30 by the evening of Thu 10 Jun, .* in the cooler\. 10 are lost all the same: 10 for Fern\.$/,
    );
    expect(tenderInWords(alarm.atRisk)).toBe("20 tender stems for 1 booking are still to be cut.");
  });

  test("[T12] frost on Saturday the 12th: of Saturday's 20 half are open on Friday and can be cut then, unless the bed is sprayed or Friday has passed", () => {
    const cutOnFriday = (snap: ReturnType<typeof tender>, today: string) =>
      frostAlarm(on(snap, today), number("2027-06-12"))
        .cutAhead.filter(({ cutDay }) => cutDay === number("2027-06-11"))
        .reduce((sum, { stems }) => sum + stems, 0);
    expect(cutOnFriday(tender(), "2027-06-08")).toBe(10);
    const closed = bed({ id: 1, noEntryFrom: day("2027-06-11"), noEntryUntil: day("2027-06-12") });
    expect(cutOnFriday(tender({ beds: [closed] }), "2027-06-08")).toBe(0);
    expect(cutOnFriday(tender(), "2027-06-12")).toBe(0);
  });

  test("[T12] [N5] nothing is at risk or cut ahead for an enquiry", () => {
    const { bookings } = tender();
    const asked = tender({ bookings: bookings.map((row) => ({ ...row, status: "enquiry" })) });
    const alarm = frostAlarm(on(asked, "2027-06-08"), number("2027-06-11"));
    expect([alarm.atRisk, alarm.cutAhead, alarm.stillLost]).toEqual([[], [], []]);
  });

  test("[T12] a hardy crop loses nothing", () => {
    const hardy = tender({ crops: [crop({ id: 1, name: "Statice" })] });
    const alarm = frostAlarm(on(hardy, "2027-06-08"), number("2027-06-11"));
    expect([alarm.atRisk, alarm.cutAhead, alarm.stillLost]).toEqual([[], [], []]);
    expect(alarmInWords(alarm)).toBe("No tender stem of a booking would freeze.");
  });

  test("[T12] on any farm the match after the frost is proved, cuts no tender stem from the frost on, holds none too long, and no bed gives more than a count by hand leaves it", () => {
    let saved = 0;
    fc.assert(
      fc.property(anyGarden, fc.integer({ min: 3, max: 14 }), fc.integer({ min: 1, max: 10 }), (snap, date, nights) => {
        const today = number(`2027-06-${String(date).padStart(2, "0")}`);
        const plan = on(snap, today);
        const morning = today + nights;
        const alarm = frostAlarm(plan, morning);
        expect(checkMatch(alarm.match)).toEqual([]);
        const given = new Map<string, number>();
        for (const { supplyIndex, stand, cutDay, stems, needIndex } of alarm.match.servings) {
          const { crop: of } = alarm.match.supplies[supplyIndex];
          if (stand.kind !== "planting" || stand.isRecorded || cutDay < today || !of.tender) continue;
          expect(cutDay).toBeLessThan(morning);
          const { eventDay, booking: served, asks } = alarm.match.needs[needIndex];
          const age = eventDay - cutDay;
          expect(age).toBeLessThanOrEqual(keptDays(of, snap)[1]);
          expect(age).toBeGreaterThanOrEqual(lastCutBySpec(snap.farm, served, asks));
          const key = `${stand.planting.planting.id} ${cutDay}`;
          given.set(key, (given.get(key) ?? 0) + stems);
        }
        // By hand: what the forecast gives on each day before the frost, and on the eve a part of the next picking day's.
        const isPicked = (at: number) => snap.farm.pickingWeekdays.includes(((at + 3) % 7) + 1);
        for (const { planting: own, cutDays, usableStems } of plan.forecast.plantings) {
          const next = cutDays.findIndex((at) => at >= morning);
          for (let at = today; at < morning; at++) {
            const place = cutDays.indexOf(at);
            let most = place < 0 ? 0 : usableStems[place];
            if (at === morning - 1 && next >= 0) {
              const days: number[] = [cutDays[next]];
              while (!isPicked(days[0] - 1)) days.unshift(days[0] - 1);
              most += Math.floor((usableStems[next] * days.filter((open) => open <= at).length) / days.length);
            }
            expect(given.get(`${own.id} ${at}`) ?? 0).toBeLessThanOrEqual(most);
          }
        }
        const short = (shorts: ArrayLike<number>) => Array.from(shorts).reduce((sum, stems) => sum + stems, 0);
        const lost = alarm.stillLost.reduce((sum, { stems }) => sum + stems, 0);
        const risked = alarm.atRisk.reduce((sum, { stems }) => sum + stems, 0);
        expect(lost).toBeGreaterThanOrEqual(short(alarm.match.shortStems) - short(plan.work.match.shortStems));
        // Where nothing would freeze nothing is lost; a stem cut on the eve may even come in time where it would not have.
        if (risked === 0) expect(short(alarm.match.shortStems)).toBeLessThanOrEqual(short(plan.work.match.shortStems));
        if (lost < risked) saved++;
      }),
      anySeed,
    );
    expect(saved).toBeGreaterThan(0);
  });
});
