import { FROM_MEMORY, type Origin } from "#lib/domain/sourced";
import { publishedIn } from "./marked";

/**
 * A USDA half zone: a band of the average yearly lowest temperature, in degrees Fahrenheit (`atLeast` up to `below`).
 * It is neither the record low nor a frost date.
 */
export type HardinessZone = {
  readonly zone: string;
  readonly atLeastFahrenheit: number;
  readonly belowFahrenheit: number;
  readonly origin: Origin;
};

const band = (zone: string, atLeastFahrenheit: number, origin: Origin): HardinessZone => ({
  zone,
  atLeastFahrenheit,
  belowFahrenheit: atLeastFahrenheit + 5,
  origin,
});

const SEEN = publishedIn("USNA-ZONES");

/** Half zones 4b to 9a, cold to warm, each 5 F wide. Bands 7b to 9a continue the steps of the published table from memory. */
export const HARDINESS_ZONES: readonly HardinessZone[] = [
  band("4b", -25, SEEN),
  band("5a", -20, SEEN),
  band("5b", -15, SEEN),
  band("6a", -10, SEEN),
  band("6b", -5, SEEN),
  band("7a", 0, SEEN),
  band("7b", 5, FROM_MEMORY),
  band("8a", 10, FROM_MEMORY),
  band("8b", 15, FROM_MEMORY),
  band("9a", 20, FROM_MEMORY),
];
