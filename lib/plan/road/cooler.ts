import { cropAs } from "#lib/domain/crop-of-variety";
import { toDayNumber } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { CoolerStock } from "#lib/domain/records/cooler-lot";
import type { CoolerMove } from "#lib/domain/records/cooler-move";
import type { Crop } from "#lib/domain/records/crop";
import type { Cut } from "#lib/domain/records/cut";
import type { Purchase } from "#lib/domain/records/purchase";
import type { Variety } from "#lib/domain/records/variety";
import { ById } from "#lib/domain/snapshot";
import { cutLots } from "./cut-lots";
import { colourFitCents, cropFitCents } from "./fit";
import { type Hold, holdOf, lastEventDay } from "./hold-window";
import type { Match } from "./match";
import type { Need } from "./needs";
import type { Plan } from "./plan";
import { openDayOf } from "./purchases";
import type { Stand } from "./supply";

/** Stems of a lot and the booking or delivery that has them. */
type LotPart = { readonly booking: Booking; readonly stems: number };

/** What came into a lot and what left it, as it was recorded. `goodStems` of a cut are those fit to use. */
export type LotEntry =
  | { readonly kind: "put in"; readonly day: number; readonly stems: number; readonly stock: CoolerStock }
  | { readonly kind: "cut"; readonly day: number; readonly stems: number; readonly cut: Cut; readonly place: string }
  | { readonly kind: "arrived"; readonly day: number; readonly stems: number; readonly purchase: Purchase }
  | { readonly kind: "moved"; readonly day: number; readonly stems: number; readonly move: CoolerMove }
  | { readonly kind: "used"; readonly day: number; readonly stems: number; readonly booking: Booking };

/**
 * A lot of the cooler: what stands there of a variety cut on one day, or bought in and open on it, whoever cut it. `leftStems` is what came in less what left [ST2]; `claims` are what the
 * plan gives of it to events ahead of bookings that are cut for [N5] and to deliveries, `couldServe` all events ahead that it fits and keeps for, those of enquiries too. Day numbers.
 */
export type CoolerLot = {
  readonly variety: Variety;
  readonly crop: Crop;
  readonly hold: Hold;
  readonly cutDay: number;
  /** The last event for which it is as good as fresh, and the last at a stretch. */
  readonly lastGoodDay: number;
  readonly lastDay: number;
  readonly leftStems: number;
  readonly claims: readonly LotPart[];
  readonly couldServe: readonly Booking[];
  /** By day; of a day what came in first. */
  readonly entries: readonly LotEntry[];
};

/** Days after its last on which a lot that nobody emptied counts as gone. Our own choice. */
export const GONE_AFTER_DAYS = 14;

/** What the cooler needs of a plan made on a day. */
type Stored = Pick<Plan, "snapshot" | "match" | "meetingSeasons"> & {
  readonly today: number;
  readonly work: Pick<Plan["work"], "match" | "orders">;
  readonly forecast: Pick<Plan["forecast"], "plantings">;
};

/** The lots of the cooler on a plan's day, the oldest first, then by variety; also those that are empty, and no older than {@link GONE_AFTER_DAYS} past their days. */
export function storedLots(plan: Stored): CoolerLot[] {
  const { snapshot, today } = plan;
  const varieties = new ById("variety", snapshot.varieties);
  const crops = new ById("crop", snapshot.crops);
  const parts = partsByLot(plan);
  return [...entriesByLot(plan)]
    .map(([key, entries]) => {
      const [varietyId, cutDay] = key.split(" ").map(Number);
      const variety = varieties.get(varietyId);
      const crop = cropAs(variety, crops.get(variety.cropId));
      return lotOf({ plan, variety, crop, cutDay, entries, parts: parts.get(key) ?? [] });
    })
    .filter(({ lastDay }) => lastDay + GONE_AFTER_DAYS >= today)
    .sort((a, b) => a.cutDay - b.cutDay || a.variety.id - b.variety.id);
}

type LotParts = {
  readonly plan: Stored;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly cutDay: number;
  readonly entries: readonly LotEntry[];
  readonly parts: readonly LotPart[];
};

function lotOf({ plan, variety, crop, cutDay, entries, parts }: LotParts): CoolerLot {
  const { farm } = plan.snapshot;
  const hold = holdOf(crop, farm);
  const outFor = (id: number) =>
    entries.reduce(
      (sum, entry) =>
        entry.kind === "moved" && entry.move.kind === "taken out" && entry.move.bookingId === id
          ? sum + entry.stems
          : sum,
      0,
    );
  const standing = parts.flatMap(({ booking, stems }) => {
    const left = stems - outFor(booking.id);
    return left > 0 ? { booking, stems: left } : [];
  });
  const isOver = ({ booking }: LotPart) => toDayNumber(booking.eventOn) < plan.today;
  const used = standing.filter(isOver).map(({ booking, stems }): LotEntry => {
    return { kind: "used", day: toDayNumber(booking.eventOn), stems, booking };
  });
  const all = [...entries, ...used].sort((a, b) => a.day - b.day || Number(isIn(b)) - Number(isIn(a)));
  const leftStems = all.reduce((sum, entry) => sum + (isIn(entry) ? entry.stems : -entry.stems), 0);
  const lastDay = lastEventDay(cutDay, hold);
  return {
    ...{ variety, crop, hold, cutDay, lastDay },
    lastGoodDay: cutDay + Math.floor(hold.days),
    leftStems: Math.max(0, leftStems),
    claims: standing.filter((part) => !isOver(part)),
    couldServe: fitting(plan.match, variety, crop, (need) => {
      const isInTime = cutDay <= need.eventDay - need.leadDays && need.eventDay <= lastDay;
      return isInTime && need.eventDay >= plan.today;
    }),
    entries: all,
  };
}

/** Whether stems came in. */
export const isIn = ({ kind }: LotEntry): boolean => kind === "put in" || kind === "cut" || kind === "arrived";

const keyOf = (varietyId: number, day: number): string => `${varietyId} ${day}`;

/** What was put in, cut for use and moved, by lot. A lot is known by what came in. */
function entriesByLot({ snapshot, forecast, meetingSeasons }: Stored): Map<string, LotEntry[]> {
  const lots = new Map<string, LotEntry[]>();
  const enter = (key: string, entry: LotEntry) => lots.set(key, [...(lots.get(key) ?? []), entry]);
  const beds = new ById("bed", snapshot.beds);
  for (const stock of snapshot.coolerStock) {
    const day = toDayNumber(stock.cutOn);
    enter(keyOf(stock.varietyId, day), { kind: "put in", day, stems: stock.stemCount, stock });
  }
  for (const { cut, day, goodStems } of cutLots(snapshot, forecast.plantings, meetingSeasons))
    if (goodStems > 0)
      enter(keyOf(cut.varietyId, day), {
        ...{ kind: "cut", day, stems: goodStems, cut },
        place: beds.get(cut.bedId).name,
      });
  for (const purchase of snapshot.purchases) {
    const { varietyId, arrivedOn, arrivedStems } = purchase;
    if (arrivedOn === null || arrivedStems === null || arrivedStems === 0) continue;
    const key = keyOf(varietyId, toDayNumber(openDayOf(purchase)));
    enter(key, { kind: "arrived", day: toDayNumber(arrivedOn), stems: arrivedStems, purchase });
  }
  for (const move of snapshot.coolerMoves) {
    const key = keyOf(move.varietyId, toDayNumber(move.cutOn));
    if (lots.has(key)) enter(key, { kind: "moved", day: toDayNumber(move.movedOn), stems: move.stemCount, move });
  }
  return lots;
}

/** Whether stems stand in the cooler by what is written down: what is on the way does not. */
export const isStored = (stand: Stand): boolean =>
  stand.kind === "cooler" ? stand.purchase?.arrivedStems !== null : stand.isRecorded === true;

/** What bookings that are cut for and deliveries have of each lot, by the day of their event. */
function partsByLot({ work: { match, orders } }: Stored): Map<string, LotPart[]> {
  const stems = new Map<string, Map<Booking, number>>();
  for (const { needs, servings, supplies } of orders ? [match, orders.match] : [match])
    for (const serving of servings) {
      if (!isStored(serving.stand)) continue;
      const key = keyOf(supplies[serving.supplyIndex].variety.id, serving.cutDay);
      const { booking } = needs[serving.needIndex];
      const ofLot = stems.get(key) ?? new Map<Booking, number>();
      ofLot.set(booking, (ofLot.get(booking) ?? 0) + serving.stems);
      stems.set(key, ofLot);
    }
  const inTurn = (a: LotPart, b: LotPart) => toDayNumber(a.booking.eventOn) - toDayNumber(b.booking.eventOn);
  return new Map(
    [...stems].map(([key, ofLot]) => [
      key,
      [...ofLot].map(([booking, count]) => ({ booking, stems: count })).sort(inTurn),
    ]),
  );
}

/** The bookings with a need that a variety fits and that is of these, each once, by the day of the event. */
function fitting({ needs }: Match, variety: Variety, crop: Crop, isOfThese: (need: Need) => boolean): Booking[] {
  const fit = needs.filter(
    (need) => isOfThese(need) && cropFitCents(need, crop) !== null && colourFitCents(need, variety.colour) !== null,
  );
  return [...new Set(fit.map(({ booking }) => booking))].sort(
    (a, b) => toDayNumber(a.eventOn) - toDayNumber(b.eventOn),
  );
}

/** The lot of a variety cut on a day, where there is one. */
export const lotOn = (lots: readonly CoolerLot[], varietyId: number, cutDay: number): CoolerLot | undefined =>
  lots.find((lot) => lot.variety.id === varietyId && lot.cutDay === cutDay);

/** Stems of some lots added up. */
export const stemsIn = (lots: readonly Pick<CoolerLot, "leftStems">[]): number =>
  lots.reduce((sum, { leftStems }) => sum + leftStems, 0);
