import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { isoWeekOf, toDay } from "#lib/domain/day";
import { placeOf } from "#lib/plan/road/pick-list";
import { pickRows } from "#lib/plan/road/pick-rows";
import { byPickingDay, type PickDay } from "#lib/plan/road/pick-sheets";
import { pickWeek } from "#lib/plan/road/pick-week";
import { provenPlan } from "../../proven-plan";
import { bed, booking, crop, focal, planting, snapshot, variety } from "../../small-farm";

const walked = (days: readonly PickDay[]) =>
  pickWeek(days).map(({ stand, variety, ofDay }) => [
    placeOf(stand),
    variety.id,
    [...ofDay].map(([day, { stemsToCut }]) => [toDay(day), stemsToCut]),
  ]);

test("two beds on two days are two rows, D2 before D10, each with its stems of either day", () => {
  const { pickList } = provenPlan(
    snapshot({
      beds: [bed({ id: 1, name: "D10" }), bed({ id: 2, name: "D2" })],
      crops: [crop({ id: 1 })],
      varieties: [variety({ id: 1 })],
      plantings: [planting({ id: 1, bedId: 1 }), planting({ id: 2, bedId: 2 })],
      bookings: [booking({ id: 1, stemLines: focal(60) })],
    }),
    2027,
  );
  const days = byPickingDay(pickList);
  expect(days.length).toBe(2);
  const stemsIn = (place: string) =>
    days.map(({ cutDay, lines }) => [
      toDay(cutDay),
      lines.reduce((sum, { stand, stemsToCut }) => sum + (placeOf(stand) === place ? stemsToCut : 0), 0),
    ]);
  expect(walked(days)).toEqual([
    ["D2", 1, stemsIn("D2")],
    ["D10", 1, stemsIn("D10")],
  ]);
});

test.each([5, 9, 14])("a week's rows hold each day's own, none twice and none lost, in one walk (farm %i)", (seed) => {
  const { pickList } = provenPlan(seededFarm(seed, { bedCount: 20, bookingCount: 12 }), 2027);
  const every = byPickingDay(pickList);
  const weekOf = ({ cutDay }: PickDay) => isoWeekOf(toDay(cutDay));
  for (const week of new Set(every.map(weekOf))) {
    const days = every.filter((day) => weekOf(day) === week);
    const rows = pickWeek(days);
    for (const { cutDay, lines } of days) {
      const ofDay = rows.flatMap((row) => row.ofDay.get(cutDay) ?? []);
      const key = ({ stand, variety, stems }: (typeof ofDay)[number]) => `${placeOf(stand)} ${variety.id} ${stems}`;
      expect(ofDay.map(key).sort()).toEqual(pickRows(lines).map(key).sort());
    }
    const places = rows.map(({ stand }) => placeOf(stand));
    const runs = places.filter((place, index) => index === 0 || places[index - 1] !== place);
    expect(new Set(runs).size).toBe(runs.length);
    const crops = rows.map(({ stand, crop }) => `${placeOf(stand)} ${crop.id}`);
    const cropRuns = crops.filter((one, index) => index === 0 || crops[index - 1] !== one);
    expect(new Set(cropRuns).size).toBe(cropRuns.length);
  }
});
