import { groupsOf } from "#lib/domain/groups-of";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { CutLot } from "./cut-lots";
import { placeKey } from "./cut-lots";
import type { PlantingForecast } from "./forecast";
import type { Stand } from "./supply";
import { stemsThatWait, waitsUntil } from "./waiting-stems";

/** Stems of a planting that are forecast for a picking day and not cut yet; `place` is that of the planting among those of the season. */
type StandingLot = {
  readonly planting: PlantingForecast;
  readonly place: number;
  readonly day: number;
  /** The picking day for which they were forecast, which is an earlier one where they were left [T14]. */
  readonly from: number;
  readonly stand: Stand;
  readonly stemsAtFirst: number;
  stems: number;
};

/** What is forecast and not cut yet, day by day, as days pass and cuts are recorded. */
export class StandingStems {
  readonly #byDay = new Map<number, StandingLot[]>();
  readonly #farm: Farm;
  readonly #placeOf: ReadonlyMap<number, number>;

  /** @param from  of what each planting is to give only picking days from this day on; before it stands what it gave as days passed [O5] [PL1] */
  constructor(farm: Farm, plantings: readonly PlantingForecast[], from: number) {
    this.#farm = farm;
    this.#placeOf = new Map(plantings.map(({ planting }, place) => [planting.id, place]));
    for (const planting of plantings) {
      const { asPassed, turns } = planting;
      const passed = turns.findLast(({ fromDay }) => fromDay <= from)?.forecast ?? asPassed ?? planting;
      this.#add(passed, (day) => asPassed === null || day < from);
      if (asPassed) this.#add(planting, (day) => day >= from);
    }
  }

  #add(planting: PlantingForecast, isOf: (day: number) => boolean, takenOn?: ReadonlyMap<number, number>): void {
    const stand: Stand = { kind: "planting", planting };
    const place = this.#placeOf.get(planting.planting.id) ?? 0;
    planting.cutDays.forEach((day, index) => {
      if (!isOf(day)) return;
      const stemsAtFirst = planting.usableStems[index];
      const stems = Math.max(0, stemsAtFirst - (takenOn?.get(day) ?? 0));
      const lot = { planting, place, day, from: day, stand, stemsAtFirst, stems };
      const known = this.#byDay.get(day);
      if (known === undefined) this.#byDay.set(day, [lot]);
      else if (takenOn === undefined) known.push(lot);
      else
        this.#byDay.set(
          day,
          [...known, lot].sort((a, b) => a.place - b.place),
        );
    });
  }

  /** From a day on plantings are known to give otherwise, as more of their plants was seen [PL1]. What was taken of later days stays taken. */
  turn(day: number, forecasts: readonly PlantingForecast[]): void {
    for (const forecast of forecasts) {
      const taken = new Map<number, number>();
      for (const [known, lots] of this.#byDay) {
        const own =
          known < day
            ? undefined
            : lots.find(({ planting, from }) => from === known && planting.planting.id === forecast.planting.id);
        if (!own) continue;
        taken.set(known, own.stemsAtFirst - own.stems);
        this.#byDay.set(
          known,
          lots.filter((lot) => lot !== own),
        );
      }
      this.#add(forecast, (cutDay) => cutDay >= day, taken);
    }
  }

  hasBefore = (day: number): boolean => [...this.#byDay.keys()].some((known) => known < day);

  dropBefore(day: number): void {
    for (const known of this.#byDay.keys()) if (known < day) this.#byDay.delete(known);
  }

  *lots(): Generator<StandingLot> {
    for (const lots of this.#byDay.values()) for (const lot of lots) if (lot.stems > 0) yield lot;
  }

  /**
   * Takes away what cuts of one day leave no more of [T3]: all that stood there where fewer were cut than asked; else the good stems. Cut on a day for which
   * nothing was forecast there, they are taken from the next picking day within the crop's field days. What was left to stand waits for the next picking day [T14].
   */
  take(cuts: readonly CutLot[]): void {
    for (const [place, ofPlace] of groupsOf(cuts, ({ cut }) => placeKey(cut))) {
      const [{ day, stand }] = ofPlace;
      const goodStems = ofPlace.reduce((sum, lot) => sum + lot.goodStems, 0);
      const here = this.#at(place, day);
      if (here.length > 0 && ofPlace.some(({ cut }) => cut.restStands)) {
        takeStems(here, goodStems);
        for (const lot of here) this.#leave(lot);
      } else if (here.length > 0)
        takeStems(here, ofPlace.some(({ isAllThereWas }) => isAllThereWas) ? Number.POSITIVE_INFINITY : goodStems);
      else if (stand.kind === "planting")
        takeStems(this.#next(place, day, stand.planting.crop.fieldDays.count), goodStems);
    }
  }

  /** Moves what is left of a lot to the next picking day; what does not keep in the field until then is gone. */
  #leave(lot: StandingLot): void {
    const { planting, place, day, from } = lot;
    const until = waitsUntil(this.#farm, planting, day);
    const stems = Math.min(lot.stems, stemsThatWait(planting, from, until, this.#farm));
    lot.stems = 0;
    if (stems === 0) return;
    const stand: Stand = { kind: "planting", planting, leftFrom: from };
    this.#byDay.set(until, [
      ...(this.#byDay.get(until) ?? []),
      { planting, place, day: until, from, stand, stemsAtFirst: stems, stems },
    ]);
  }

  #next(place: string, day: number, fieldDays: number): StandingLot[] {
    for (let next = day + 1; next <= day + fieldDays; next++) {
      const lots = this.#at(place, next);
      if (lots.length > 0) return lots;
    }
    return [];
  }

  #at = (place: string, day: number): StandingLot[] =>
    (this.#byDay.get(day) ?? []).filter(({ planting }) => placeKey(planting.planting) === place);
}

/** Takes so many stems from the lots, the first first. */
function takeStems(lots: readonly StandingLot[], most: number): void {
  let left = most;
  for (const lot of lots) {
    const stems = Math.min(lot.stems, left);
    lot.stems -= stems;
    left -= stems;
  }
}
