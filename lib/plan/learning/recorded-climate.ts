import { recordedDays } from "#lib/domain/records/weather-day";
import { type DailyWeather, LEAST_RECORDED_YEARS } from "#lib/domain/weather";

/** The usual year that a record makes: mean highs and lows of each month, January first, degrees Celsius to a tenth. */
export type RecordedClimate = {
  readonly monthlyHighsC: readonly number[];
  readonly monthlyLowsC: readonly number[];
  /** The fewest years that any month was recorded in. */
  readonly yearCount: number;
};

/** A month of a year with fewer recorded days says too little of it. Our choice. */
const LEAST_DAYS = 20;

type Month = { dayCount: number; highC: number; lowC: number };

/** The climate of a record: of each month the mean over the years of its mean high and low [H9]; null while any month has fewer than ten years. */
export function recordedClimate(weather: DailyWeather): RecordedClimate | null {
  const months = Array.from({ length: 12 }, () => new Map<string, Month>());
  for (const { date, highC, lowC } of recordedDays(weather)) {
    const ofYears = months[Number(date.slice(5, 7)) - 1];
    const year = date.slice(0, 4);
    const known = ofYears.get(year) ?? { dayCount: 0, highC: 0, lowC: 0 };
    known.dayCount += 1;
    known.highC += highC;
    known.lowC += lowC;
    ofYears.set(year, known);
  }
  const whole = months.map((ofYears) => [...ofYears.values()].filter(({ dayCount }) => dayCount >= LEAST_DAYS));
  const yearCount = Math.min(...whole.map((ofYears) => ofYears.length));
  if (yearCount < LEAST_RECORDED_YEARS) return null;
  const meanOf = (ofYears: readonly Month[], name: "highC" | "lowC") =>
    Math.round((ofYears.reduce((sum, month) => sum + month[name] / month.dayCount, 0) / ofYears.length) * 10) / 10 + 0;
  return {
    monthlyHighsC: whole.map((ofYears) => meanOf(ofYears, "highC")),
    monthlyLowsC: whole.map((ofYears) => meanOf(ofYears, "lowC")),
    yearCount,
  };
}
