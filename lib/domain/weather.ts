/** Temperatures are degrees Celsius inside; people type and read what their farm uses. */
export const TEMPERATURE_UNITS = ["c", "f", "tenths"] as const;
/** `c` and `f` are whole or decimal degrees; `tenths` are tenths of a degree Celsius, as public daily summaries write them. */
export type TemperatureUnit = (typeof TEMPERATURE_UNITS)[number];

/** No thermometer in the shade has read less or more: −89.2 °C and 56.7 °C are the world's records (WMO archive of extremes; from memory). */
export const COLDEST_C = -90;
export const HOTTEST_C = 57;

/** Degrees Celsius of a temperature written in `unit`. */
export function toCelsius(written: number, unit: TemperatureUnit): number {
  if (unit === "f") return ((written - 32) * 5) / 9;
  return unit === "tenths" ? written / 10 : written;
}

/** Degrees Fahrenheit of a temperature in degrees Celsius. */
export const toFahrenheit = (celsius: number): number => (celsius * 9) / 5 + 32;

/**
 * Daily highs and lows, degrees Celsius, one for each day from `firstDay` (a day number) on. A day that nobody recorded holds NaN in both.
 */
export type DailyWeather = {
  readonly firstDay: number;
  readonly highC: Float64Array;
  readonly lowC: Float64Array;
};

/** The mean of a day's high and low, degrees Celsius; NaN where the day is not recorded or lies outside the record. */
export function meanC(weather: DailyWeather, day: number): number {
  const index = day - weather.firstDay;
  return index < 0 || index >= weather.highC.length ? Number.NaN : (weather.highC[index] + weather.lowC[index]) / 2;
}

/** The low of a day, degrees Celsius; NaN where the day is not recorded or lies outside the record. */
export const lowOn = ({ firstDay, lowC }: DailyWeather, day: number): number => lowC[day - firstDay] ?? Number.NaN;

/** Fewer recorded years than this say too little of what one year in ten does: of frost, of a usual year, of a first cut. Our choice; normals are made of thirty. */
export const LEAST_RECORDED_YEARS = 10;
