import fc from "fast-check";
import { toDay, toDayNumber } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import type { Plan } from "#lib/plan/road/plan";
import { provenPlan } from "../../proven-plan";
import { day } from "../../small-farm";
import { anyFarm } from "../any-farm";

/** The plan of 2027 made on a day, proven. */
export const on = (snap: Snapshot, today: string | number): Plan =>
  provenPlan(snap, 2027, undefined, null, typeof today === "number" ? today : toDayNumber(day(today)));

/** Stems short of the bookings that are cut for, need by need. */
export const shortOf = ({ work: { match } }: Plan): number[] => [...match.shortStems];

/** The days from a little before the first cut to the last event. */
export const daysOf = ({ match }: Plan): number[] => {
  const days = [...match.supplies.flatMap((supply) => supply.days), ...match.needs.map(({ eventDay }) => eventDay)];
  if (days.length === 0) return [];
  const [first, last] = [Math.min(...days) - 1, Math.max(...days) + 1];
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
};

/** What the list of a morning asks for, as records of cuts that came as asked. */
export const asAsked = (made: Plan, today: number): Omit<Cut, "id">[] =>
  made.pickList.flatMap(({ stand, cutDay, variety, booking: { id }, stemsToCut }) =>
    stand.kind === "planting" && !stand.isRecorded && cutDay === today
      ? {
          ...{ cutOn: toDay(today), bedId: stand.planting.bed.id, varietyId: variety.id, bookingId: id },
          ...{ stemsCut: stemsToCut, stemsAsked: stemsToCut, goodStems: null, restStands: false },
        }
      : [],
  );

/** Two plantings of a variety in one bed have one record. */
export function onceEach(cuts: readonly Omit<Cut, "id">[]): Cut[] {
  const byKey = new Map<string, Omit<Cut, "id">>();
  for (const row of cuts) {
    const key = [row.cutOn, row.bedId, row.varietyId, row.bookingId].join();
    const known = byKey.get(key);
    const [stemsCut, stemsAsked] = [
      row.stemsCut + (known?.stemsCut ?? 0),
      (row.stemsAsked ?? 0) + (known?.stemsAsked ?? 0),
    ];
    byKey.set(key, { ...row, stemsCut, stemsAsked });
  }
  return [...byKey.values()].map((row, index) => ({ id: index + 1, ...row }));
}

/** Farms in which every variety stands once in a bed, so that a record is of one planting. */
export const anyGarden = anyFarm.map((snap) => ({
  ...snap,
  plantings: [...new Map(snap.plantings.map((row) => [`${row.bedId} ${row.varietyId}`, row])).values()],
}));

/** A season in which some of what the list asks for comes otherwise, or is cut for nobody; the records, and the last day. */
export function lived(snap: Snapshot, seed: number, dayCount: number): { cuts: Cut[]; today: number } {
  const random = seededRandom(seed);
  let cuts: Cut[] = [];
  const days = daysOf(provenPlan(snap, 2027)).slice(0, dayCount);
  for (const today of days) {
    const asked = asAsked(provenPlan({ ...snap, cuts }, 2027, undefined, null, today), today);
    const came = asked.flatMap((row) => {
      const kind = wholeBetween(random, 0, 5);
      if (kind === 0) return [];
      if (kind < 3) return [row];
      const stemsCut = wholeBetween(random, 0, row.stemsCut + 3);
      return kind === 5 ? [{ ...row, bookingId: null, stemsAsked: null, stemsCut }] : [{ ...row, stemsCut }];
    });
    const byPlace = new Map(came.map((row) => [[row.cutOn, row.bedId, row.varietyId, row.bookingId].join(), row]));
    cuts = [...cuts, ...byPlace.values()].map((row, index) => ({ ...row, id: index + 1 }));
  }
  return { cuts, today: days.at(-1) ?? 0 };
}

export const anySeason = fc.record({ snap: anyGarden, seed: fc.nat(), dayCount: fc.integer({ min: 5, max: 25 }) });

export const sum = (stems: readonly number[]) => stems.reduce((all, one) => all + one, 0);
