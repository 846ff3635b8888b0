import { isoWeekday, toDay, toDayNumber } from "#lib/domain/day";
import type { BudLookDraft } from "#lib/domain/records/bud-look";
import type { CutDraft } from "#lib/domain/records/cut";
import type { ReviewDraft } from "#lib/domain/records/review";
import type { Status } from "#lib/domain/words";
import { normalQuantile } from "#lib/maths/normal";
import { seededRandom } from "#lib/maths/random";
import { firstFrostDay } from "#lib/plan/road/first-frost";
import { type Forecast, forecast, frostDayOf, ORDINARY_YEAR } from "#lib/plan/road/forecast";
import { grown } from "#lib/plan/road/grown";
import type { PickLine } from "#lib/plan/road/pick-list";
import type { Plan } from "#lib/plan/road/plan";
import { goodShareOn } from "#lib/plan/road/saleable-share";

/**
 * How an invented season came, days late and share of the stems that all plantings have in common beside the part of each of its own, and on which
 * picking days somebody wrote down what was cut; `until` is the first day that is not over, both as day numbers.
 */
export type Lived = {
  readonly lateDays: number;
  readonly yieldFactor: number;
  readonly seed: number;
  readonly isWritten: (day: number, until: number) => boolean;
};

/** What a grower wrote down of it. */
export type SeasonRecords = {
  readonly cuts: readonly CutDraft[];
  readonly budLooks: readonly BudLookDraft[];
  readonly reviews: readonly ReviewDraft[];
};

/** What came of a season, by planting: its forecast with its own days late, and its own share of the stems. */
type Came = { readonly bloom: Forecast; readonly yieldOf: ReadonlyMap<number, number> };

/**
 * The records of a season up to a day, as somebody would have made them who cut to the list of the plan: what was there and no more than was asked, a look
 * at the buds before each first cut and on it, and a review of each event a week after it. Invented from a seed: the same one gives the same season.
 * @param asked  the plan of the whole season
 * @param until  the first day that nobody has recorded, as a day number
 */
export function livedSeason(asked: Plan, lived: Lived, until: number): SeasonRecords {
  const came = whatCame(asked, lived);
  const cuts = cutsOf(asked, came, (day) => day < until && lived.isWritten(day, until));
  return {
    cuts,
    budLooks: looksOf(came, until),
    reviews: reviewsOf(asked, cuts, until),
  };
}

/** A crop is late by up to some days of its own, a planting by a part of its curve's spread. */
const CROP_SPREAD_DAYS = 2;
const OWN_PART = 0.5;

function whatCame({ snapshot, seasonYear }: Plan, { lateDays, yieldFactor, seed }: Lived): Came {
  const random = seededRandom(seed);
  const gauss = () => Math.max(-2, Math.min(2, normalQuantile(Math.max(1e-9, random()))));
  const ofCrop = new Map(snapshot.crops.map(({ id }) => [id, CROP_SPREAD_DAYS * gauss()]));
  const late = new Map<number, number>();
  const yieldOf = new Map<number, number>();
  for (const { planting, crop, curve } of grown(snapshot, seasonYear)) {
    const own = OWN_PART * (curve?.firstCutSpreadDays ?? 0) * gauss();
    late.set(planting.id, Math.round(lateDays + (ofCrop.get(crop.id) ?? 0) + own));
    yieldOf.set(planting.id, Math.max(0.3, yieldFactor + OWN_PART * (curve?.yieldSpread ?? 0) * gauss()));
  }
  const recorded = snapshot.weather && firstFrostDay(snapshot.weather, seasonYear);
  const frostDay = recorded ?? frostDayOf(snapshot.farm, seasonYear);
  const year = {
    ...ORDINARY_YEAR,
    daysLateOf: ({ planting }: { planting: { id: number } }) => late.get(planting.id) ?? 0,
  };
  return { bloom: forecast(snapshot, seasonYear, frostDay, year), yieldOf };
}

/** Where nearly all that was asked stood open, the rest was found among what opened that morning. */
const NEARLY = 0.85;

/** What was cut of each row of the list: bookings first, then what standing orders had of the rest, which is cut for nobody yet. */
function cutsOf(
  { pickList, seasonYear }: Plan,
  { bloom, yieldOf }: Came,
  isWritten: (day: number) => boolean,
): CutDraft[] {
  const standing = new Map<string, number>();
  for (const row of bloom.plantings)
    row.cutDays.forEach((day, index) => {
      const { planting } = row;
      const stems = (row.cutStems[index] / Math.max(0.1, goodShareOn(row, day))) * (yieldOf.get(planting.id) ?? 1);
      const key = placeOn(planting, day);
      standing.set(key, (standing.get(key) ?? 0) + Math.round(stems));
    });
  const cuts = new Map<string, CutDraft>();
  const ofBookings = pickList.filter(({ booking }) => booking.id > 0);
  const ofOrders = pickList.filter(({ booking }) => booking.id < 0);
  for (const line of [...ofBookings, ...ofOrders]) {
    if (!isWritten(line.cutDay) || !isOfSeason(line, seasonYear)) continue;
    const { bedId, varietyId } = line.stand.planting.planting;
    const place = placeOn({ bedId, varietyId }, line.cutDay);
    const bookingId = line.booking.id > 0 ? line.booking.id : null;
    const stood = standing.get(place) ?? 0;
    const cut = stood >= line.stemsToCut * NEARLY ? line.stemsToCut : Math.max(0, stood);
    standing.set(place, stood - cut);
    const key = `${place} ${bookingId}`;
    const before = cuts.get(key);
    cuts.set(key, {
      ...{ bedId, varietyId, bookingId, cutOn: toDay(line.cutDay), goodStems: null, restStands: false },
      stemsCut: cut + (before?.stemsCut ?? 0),
      stemsAsked: line.stemsToCut + (before?.stemsAsked ?? 0),
    });
  }
  return [...cuts.values()];
}

type OfPlanting = PickLine & { readonly stand: Extract<PickLine["stand"], { kind: "planting" }> };
const isOfSeason = (line: PickLine, seasonYear: number): line is OfPlanting =>
  line.stand.kind === "planting" && line.stand.planting.planting.seasonYear === seasonYear;

const placeOn = ({ bedId, varietyId }: { bedId: number; varietyId: number }, day: number): string =>
  `${bedId} ${varietyId} ${day}`;

/** Days off by more than this look late or early on a walk. */
const SEEN_DAYS = 2;

/** A look on the Sunday ten days or more before the first cut came, and one on the day itself. Of a variety that stands twice in a bed nothing is noted. */
function looksOf({ bloom }: Came, until: number): BudLookDraft[] {
  const places = bloom.plantings.map(({ planting }) => placeOn(planting, 0));
  return bloom.plantings.flatMap(({ planting, opensFrom, firstCut, openedStems }) => {
    const isAlone = places.filter((place) => place === placeOn(planting, 0)).length === 1;
    if (!isAlone || firstCut === null || openedStems === 0) return [];
    const { bedId, varietyId } = planting;
    const tenBefore = opensFrom - 10;
    const sunday = tenBefore - (isoWeekday(toDay(tenBefore)) % 7);
    const off = opensFrom - firstCut;
    const sign = off > SEEN_DAYS ? ("late" as const) : off < -SEEN_DAYS ? ("early" as const) : ("as due" as const);
    const looks: BudLookDraft[] = [
      { bedId, varietyId, lookedOn: toDay(sunday), sign, daysToCut: null },
      { bedId, varietyId, lookedOn: toDay(opensFrom), sign: "first bloom", daysToCut: null },
    ];
    return looks.filter(({ lookedOn }) => toDayNumber(lookedOn) < until);
  });
}

const REVIEWED_AFTER_DAYS = 7;
const isHeld = (status: Status): boolean => status === "confirmed" || status === "held";

/** What each role of an event had: planned, cut as its list came where that was written down, the rest bought in, and a share of it left over. */
function reviewsOf({ match }: Plan, cuts: readonly CutDraft[], until: number): ReviewDraft[] {
  const sums = new Map<number, { cut: number; asked: number }>();
  for (const { bookingId, stemsCut, stemsAsked } of cuts) {
    if (bookingId === null) continue;
    const sum = sums.get(bookingId) ?? { cut: 0, asked: 0 };
    sums.set(bookingId, { cut: sum.cut + stemsCut, asked: sum.asked + (stemsAsked ?? 0) });
  }
  const reviews = new Map<string, ReviewDraft>();
  match.needs.forEach(({ booking, role, stems, eventDay }, index) => {
    if (eventDay + REVIEWED_AFTER_DAYS >= until || !isHeld(booking.status)) return;
    const sum = sums.get(booking.id);
    const served = stems - match.shortStems[index];
    const cutStems = sum && sum.asked > 0 ? Math.round((served * sum.cut) / sum.asked) : served;
    const thrownAwayStems = Math.round(stems * (0.05 + ((booking.id * 7 + index) % 5) / 100));
    const before = reviews.get(`${booking.id} ${role}`);
    reviews.set(`${booking.id} ${role}`, {
      ...{ bookingId: booking.id, role },
      plannedStems: stems + (before?.plannedStems ?? 0),
      cutStems: cutStems + (before?.cutStems ?? 0),
      boughtStems: stems - cutStems + (before?.boughtStems ?? 0),
      thrownAwayStems: thrownAwayStems + (before?.thrownAwayStems ?? 0),
    });
  });
  return [...reviews.values()];
}
