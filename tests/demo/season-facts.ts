import { toDay, toDayNumber } from "#lib/domain/day";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Role } from "#lib/domain/words";
import type { Gap, GapReason } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";

/** What the tests of the demo season count in a plan. */

/** Gaps of a role whose event lies between two days of the year, both included ("06-05"). */
export const gapsBetween = (plan: Plan, role: Role, from: string, to: string): Gap[] =>
  plan.gaps.filter(({ need }) => {
    const monthDay = toDay(need.eventDay).slice(5);
    return need.role === role && monthDay >= from && monthDay <= to;
  });

export const shortStems = (gaps: readonly Gap[]): number => gaps.reduce((sum, gap) => sum + gap.shortStems, 0);

/** Different bookings behind some gaps. */
export const bookingCount = (gaps: readonly Gap[]): number => new Set(gaps.map(({ need }) => need.booking.id)).size;

/** Stems short for one reason. */
export const stemsShortFor = ({ gaps }: Pick<Plan, "gaps">, wanted: GapReason): number =>
  gaps
    .flatMap(({ reasons }) => reasons)
    .filter(({ reason }) => reason === wanted)
    .reduce((sum, { stems }) => sum + stems, 0);

/** The share of all stems asked for that the match covers. */
export function coveredShare({ match }: Plan): number {
  const needStems = match.needs.reduce((sum, { stems }) => sum + stems, 0);
  return 1 - match.shortStems.reduce((sum, stems) => sum + stems, 0) / needStems;
}

/** Crops by the stems of them that nobody has claimed, cut in some months ("08"), the most first. */
export function surplusByCrop({ surplus }: Plan, months: readonly string[]): [crop: string, stems: number][] {
  const sums = new Map<string, number>();
  for (const { crop, cutDay, stems } of surplus)
    if (months.includes(toDay(cutDay).slice(5, 7))) sums.set(crop.name, (sums.get(crop.name) ?? 0) + stems);
  return [...sums].sort(([, a], [, b]) => b - a);
}

/** The farm with every planting of a crop that winters kept in the ground. */
export function allKept(snapshot: Snapshot): Snapshot {
  const wintering = new Set(snapshot.crops.filter(({ overwinters }) => overwinters).map(({ id }) => id));
  const varietyIds = new Set(snapshot.varieties.filter(({ cropId }) => wintering.has(cropId)).map(({ id }) => id));
  return {
    ...snapshot,
    plantings: snapshot.plantings.map((planting) =>
      varietyIds.has(planting.varietyId) ? { ...planting, treatment: "kept-in-ground" } : planting,
    ),
  };
}

/** The share of what can be promised of the season's cut that bookings and standing orders take: in all, and of the stems cut in a month ("08"). */
export function soldShares({ match, orders }: Plan): { all: number; byMonth: (month: string) => number } {
  const [cut, sold] = [new Map<string, number>(), new Map<string, number>()];
  const add = (sums: Map<string, number>, day: number, stems: number) => {
    const month = toDay(day).slice(5, 7);
    sums.set(month, (sums.get(month) ?? 0) + stems);
  };
  for (const { days, stems } of match.supplies)
    days.forEach((day, index) => {
      add(cut, day, stems[index]);
    });
  for (const { cutDay, stems } of [...match.servings, ...(orders?.match.servings ?? [])]) add(sold, cutDay, stems);
  const sum = (sums: Map<string, number>) => [...sums.values()].reduce((total, stems) => total + stems, 0);
  return { all: sum(sold) / sum(cut), byMonth: (month) => (sold.get(month) ?? 0) / (cut.get(month) ?? 0) };
}

/** What each standing order asks for over the season, and how many of these stems are not there. */
export function askedByOrder({ orders }: Plan): { order: StandingOrder; asked: number; short: number }[] {
  if (!orders) return [];
  const { deliveries, match } = orders;
  const stems = [...new Set(deliveries.map(({ order }) => order))].map((order) => ({ order, asked: 0, short: 0 }));
  match.needs.forEach((need, index) => {
    const delivery = deliveries.find(({ booking }) => booking === need.booking);
    const row = stems.find(({ order }) => order === delivery?.order);
    if (!row) return;
    row.asked += need.stems;
    row.short += match.shortStems[index];
  });
  return stems;
}

const cropIdNamed = ({ crops }: Snapshot, name: string) => crops.find((crop) => crop.name === name)?.id;

const plantingsOf = (snapshot: Snapshot, crop: string) => {
  const cropId = cropIdNamed(snapshot, crop);
  const varietyIds = new Set(snapshot.varieties.filter((variety) => variety.cropId === cropId).map(({ id }) => id));
  return snapshot.plantings.filter(({ varietyId }) => varietyIds.has(varietyId));
};

/** Plants of a crop in a bed. */
export const plantsOf = (snapshot: Snapshot, crop: string, bed: string): number =>
  plantingsOf(snapshot, crop)
    .filter(({ bedId }) => snapshot.beds.find(({ id }) => id === bedId)?.name === bed)
    .reduce((sum, { plantCount }) => sum + plantCount, 0);

/** The days on which a crop is sown or planted, each once, as day numbers in order. */
export const plantingDays = (snapshot: Snapshot, crop: string): number[] =>
  [...new Set(plantingsOf(snapshot, crop).map(({ plantedOn }) => toDayNumber(plantedOn)))].sort((a, b) => a - b);
