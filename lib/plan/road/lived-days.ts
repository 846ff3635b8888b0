import { toDayNumber } from "#lib/domain/day";
import { groupsOf } from "#lib/domain/groups-of";
import type { CoolerMove } from "#lib/domain/records/cooler-move";
import type { Snapshot } from "#lib/domain/snapshot";
import { movesInOrder, type StoredStems } from "./cooler-moves";
import { type CutLot, cutLots } from "./cut-lots";
import type { PlantingForecast } from "./forecast";
import type { Need } from "./needs";
import type { Stand } from "./supply";

/** What a supply is worked out from: `plantings` are those of `seasons`, and so are the needs, in the order of the match. `today` is a day number; null where no day has passed. */
export type ToDate = {
  readonly snapshot: Snapshot;
  readonly plantings: readonly PlantingForecast[];
  readonly seasons: readonly number[];
  readonly needs: readonly Need[];
  readonly today: number | null;
};

/** Stems that were cut. `bookingId` null: for nobody yet. */
export type CutStems = StoredStems & { readonly stand: Stand };
export type OwnStems = CutStems & { readonly bookingId: number };

/** A day on which the match is made anew, and what was recorded of it. `turns` are plantings of whose plants something was seen on it: what they give from it on. */
export type LivedDay = {
  readonly day: number;
  readonly turns: readonly PlantingForecast[];
  readonly lots: readonly CutLot[];
  readonly moves: readonly CoolerMove[];
};

/** What was in the cooler for anybody and what was each booking's own as a day began. */
export type DayBegun = { readonly free: readonly CutStems[]; readonly own: readonly OwnStems[] };

/** Days that were lived through: from what, and how the last of them began, by their place. */
export type LivedDays = {
  readonly of: ToDate;
  readonly passed: readonly PlantingForecast[];
  readonly days: readonly LivedDay[];
  readonly marks: ReadonlyMap<number, DayBegun>;
};

/** Days of which the beginning is kept: what is recorded late is mostly of these. Each takes some hundred kilobytes of a large farm. */
export const DAYS_KEPT = 6;

/** A copy that can be changed alone. */
export const copied = <T extends object>(of: T): T => ({ ...of });

/** The days with a record [PL1] or with a booking that is taken or made larger [T7], and the day at hand, in their order. */
export function daysToLive(
  { snapshot, plantings, seasons, needs, today }: ToDate & { readonly today: number },
  passed: readonly PlantingForecast[],
): LivedDay[] {
  const lots = groupsOf(cutLots(snapshot, passed, seasons), ({ day }) => day);
  const turns = groupsOf(
    plantings.flatMap((row) => row.turns),
    ({ fromDay }) => fromDay,
  );
  const moves = groupsOf(movesInOrder(snapshot.coolerMoves), ({ movedOn }) => toDayNumber(movedOn));
  const taken = needs.flatMap(({ booking: { takenOn, askedBefore } }) => [
    ...(takenOn === null ? [] : [toDayNumber(takenOn)]),
    ...askedBefore.map(({ until }) => toDayNumber(until)),
  ]);
  return [...new Set([...lots.keys(), ...moves.keys(), ...turns.keys(), ...taken, today])]
    .filter((day) => day <= today)
    .sort((a, b) => a - b)
    .map((day) => ({
      day,
      turns: (turns.get(day) ?? []).map(({ forecast }) => forecast),
      lots: lots.get(day) ?? [],
      moves: moves.get(day) ?? [],
    }));
}

/**
 * The place of the day from which the past has to be lived through anew: before it nothing differs from the days that were. Null where all of it does, or
 * where what began it was not kept.
 */
export function resumable(
  before: LivedDays,
  of: ToDate,
  passed: readonly PlantingForecast[],
  days: readonly LivedDay[],
): number | null {
  if (!restsOnTheSame(before, of, passed)) return null;
  let alike = 0;
  while (alike < days.length && alike < before.days.length && isSameDay(before.days[alike], days[alike])) alike++;
  for (let place = Math.min(alike, days.length - 1); place >= 0; place--)
    if (before.marks.has(place) && before.days[place].day === days[place].day) return place;
  return null;
}

/** Whether both rest on the same farm, needs and plantings; what was recorded is looked at day by day. */
function restsOnTheSame({ of: was, passed: wasPassed }: LivedDays, of: ToDate, passed: readonly PlantingForecast[]) {
  const [a, b] = [was.snapshot, of.snapshot];
  return (
    (["farm", "crops", "varieties", "recipes", "coolerStock", "purchases", "standingOrders"] as const).every(
      (name) => a[name] === b[name],
    ) &&
    // Deliveries are told apart only once something was taken out of the cooler.
    a.coolerMoves.length > 0 === b.coolerMoves.length > 0 &&
    isSameList(was.seasons, of.seasons) &&
    isSameList(was.needs, of.needs) &&
    isSameList(wasPassed, passed)
  );
}

const isSameDay = (a: LivedDay, b: LivedDay): boolean =>
  a.day === b.day &&
  isSameList(a.turns, b.turns) &&
  isSameList(a.moves, b.moves) &&
  a.lots.length === b.lots.length &&
  a.lots.every(({ cut, goodStems }, index) => cut === b.lots[index].cut && goodStems === b.lots[index].goodStems);

const isSameList = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a === b || (a.length === b.length && a.every((one, index) => one === b[index]));
