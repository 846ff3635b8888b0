import { HARDINESS_ZONES } from "#lib/domain/catalogue/zones";
import { originInWords } from "#lib/domain/sourced";
import type { Units } from "#lib/domain/words";

/** What a hardiness zone says, in the farm's degrees; null for a zone that is not in our table. */
export function zoneInWords(zone: string, units: Units): string | null {
  const found = HARDINESS_ZONES.find((band) => band.zone === zone);
  if (!found) return null;
  const degrees = (fahrenheit: number) =>
    units === "us" ? String(fahrenheit) : (((fahrenheit - 32) * 5) / 9).toFixed(1).replace("-", "−");
  const unit = units === "us" ? "°F" : "°C";
  return `${zone}: the coldest night of an average year is ${degrees(found.atLeastFahrenheit)} to ${degrees(found.belowFahrenheit)} ${unit} (${originInWords(found.origin)}). It says nothing of frost dates.`;
}

export const ZONES = HARDINESS_ZONES.map(({ zone }) => zone);
