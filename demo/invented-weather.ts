import type { Climate } from "#lib/domain/records/climate";
import type { DailyWeather } from "#lib/domain/weather";
import { normalQuantile } from "#lib/maths/normal";
import { seededRandom } from "#lib/maths/random";
import { firstDayOf, usualYear } from "#lib/plan/road/usual-year";

/**
 * Invented daily highs and lows about a climate: weather that lasts for weeks and weather that lasts for days, from 1 January of `firstYear` to the day before
 * `endDay` (a day number).
 */
export function inventedWeather(climate: Climate, firstYear: number, endDay: number, seed: number): DailyWeather {
  const random = seededRandom(seed);
  const gauss = () => normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, random())));
  const firstDay = firstDayOf(firstYear);
  const highC = new Float64Array(endDay - firstDay);
  const lowC = highC.slice();
  let [slow, fast] = [0, 0];
  for (let year = firstYear; firstDayOf(year) < endDay; year++) {
    const usual = usualYear(climate, year);
    for (let place = 0; place < usual.highC.length && firstDayOf(year) + place < endDay; place++) {
      slow = 0.98 * slow + 0.3 * gauss();
      fast = 0.7 * fast + 1.8 * gauss();
      highC[firstDayOf(year) + place - firstDay] = usual.highC[place] + slow + fast;
      lowC[firstDayOf(year) + place - firstDay] = usual.lowC[place] + slow + fast;
    }
  }
  return { firstDay, highC, lowC };
}
