import { seededFarm } from "#demo/seeded-farm";
import { addDays, type Day, parseDay } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { seededRandom, wholeBetween } from "#lib/maths/random";

/** A seeded farm whose bookings and cooler lots all lie within three weeks of New Year 2028. */
export function aroundNewYear(seed: number): Snapshot {
  const random = seededRandom(seed);
  const given = seededFarm(seed, { bedCount: 6, bookingCount: 10 });
  const near = (): Day => addDays(parseDay("2028-01-01"), wholeBetween(random, -20, 20));
  const { varieties } = given;
  return {
    ...given,
    bookings: given.bookings.map((row) => ({ ...row, eventOn: near() })),
    coolerStock: Array.from({ length: 40 }, (_, index) => ({
      ...{ id: index + 1, cutOn: near(), stemCount: wholeBetween(random, 5, 60) },
      varietyId: varieties[wholeBetween(random, 0, varieties.length - 1)].id,
    })),
  };
}
