import type { Climate } from "#lib/domain/records/climate";
import { type DailyWeather, meanC } from "#lib/domain/weather";
import { type HeatSums, heatSums } from "./heat-sums";
import { type HeatRange, heatOf, usualHeat } from "./usual-heat";
import { firstDayOf, usualYear } from "./usual-year";

/**
 * The warmth of a place, day by day: recorded days as they were, every other as it usually is [F9]. Sums are made once for each season and
 * range of temperatures, and kept.
 */
export class Warmth {
  readonly #climate: Climate;
  readonly #recorded: DailyWeather | null;
  readonly #sums = new Map<string, HeatSums>();

  /** @param recorded  highs and lows that replace the climate's on their days */
  constructor(climate: Climate, recorded: DailyWeather | null = null) {
    this.#climate = climate;
    this.#recorded = recorded;
  }

  /** Heat from 1 January of the year before a season to 31 December of the year after it. */
  sums(seasonYear: number, range: HeatRange): HeatSums {
    const key = `${seasonYear}/${range.baseC}/${range.ceilingC}/${range.limitC}`;
    const known = this.#sums.get(key) ?? this.#added(seasonYear, range);
    this.#sums.set(key, known);
    return known;
  }

  #added(seasonYear: number, range: HeatRange): HeatSums {
    const years = [seasonYear - 1, seasonYear, seasonYear + 1].map((year) => usualHeats(this.#climate, year, range));
    const heat = new Float64Array(years.reduce((count, days) => count + days.length, 0));
    let place = 0;
    for (const days of years) {
      heat.set(days, place);
      place += days.length;
    }
    const firstDay = firstDayOf(seasonYear - 1);
    if (this.#recorded)
      for (let index = 0; index < heat.length; index++) {
        const recordedC = meanC(this.#recorded, firstDay + index);
        if (!Number.isNaN(recordedC)) heat[index] = heatOf(recordedC, range);
      }
    return heatSums(firstDay, heat);
  }
}

const usualYears = new WeakMap<Climate, Map<string, Float64Array>>();

/** The usual heat of each day of a year, made once for each climate, range and length of year. */
function usualHeats(climate: Climate, year: number, range: HeatRange): Float64Array {
  const usual = usualYear(climate, year).meanC;
  const key = `${usual.length}/${range.baseC}/${range.ceilingC}/${range.limitC}`;
  const known = usualYears.get(climate) ?? new Map<string, Float64Array>();
  usualYears.set(climate, known);
  const heats = known.get(key) ?? usual.map((mean, index) => usualHeat(mean, (index + 0.5) / usual.length, range));
  known.set(key, heats);
  return heats;
}

const ofClimates = new WeakMap<Climate, Warmth>();

/** The warmth of a climate in which nothing is recorded. */
export function usualWarmth(climate: Climate): Warmth {
  const known = ofClimates.get(climate) ?? new Warmth(climate);
  ofClimates.set(climate, known);
  return known;
}

const ofRecords = new WeakMap<DailyWeather, WeakMap<Climate, Warmth>>();

/** The warmth of a climate whose recorded days are these. */
export function recordedWarmth(climate: Climate, recorded: DailyWeather): Warmth {
  const ofRecord = ofRecords.get(recorded) ?? new WeakMap<Climate, Warmth>();
  ofRecords.set(recorded, ofRecord);
  const known = ofRecord.get(climate) ?? new Warmth(climate, recorded);
  ofRecord.set(climate, known);
  return known;
}
