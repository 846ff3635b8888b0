import type { Role } from "#lib/domain/words";
import { type ObservedChance, observedChance } from "#lib/maths/observed-chance";
import { quantile } from "#lib/maths/quantile";
import type { SeasonSamples } from "./simulation-samples";

/** What one season in ten stays below, half of them, and nine in ten. */
export type Band = { readonly low: number; readonly likely: number; readonly high: number };

/**
 * By booking, the chance that none of its stems is short; with a role, that none of that role is, and bookings that ask for none are left out.
 * @throws RangeError if no season was sampled
 */
export function coveredChances(samples: SeasonSamples, role?: Role): Map<number, ObservedChance> {
  const { frame, seasonCount } = samples;
  const needsOf = new Map<number, number[]>();
  frame.needs.forEach((need, index) => {
    if (role !== undefined && need.role !== role) return;
    const known = needsOf.get(need.bookingId);
    if (known) known.push(index);
    else needsOf.set(need.bookingId, [index]);
  });
  return new Map(
    [...needsOf].map(([bookingId, needs]) => {
      const coveredCount = shortBySeason(samples, needs).filter((short) => short === 0).length;
      return [bookingId, observedChance(coveredCount, seasonCount)];
    }),
  );
}

/**
 * Stems of a role that go short in a season: low, likely and high.
 * @throws RangeError if no season was sampled
 */
export function shortBand(samples: SeasonSamples, role: Role): Band {
  const short = shortBySeason(
    samples,
    samples.frame.needs.flatMap((need, index) => (need.role === role ? [index] : [])),
  ).sort();
  return { low: quantile(short, 0.1), likely: quantile(short, 0.5), high: quantile(short, 0.9) };
}

/** Of each season, the stems that some needs are short. */
function shortBySeason({ frame, seasonCount, shortStems }: SeasonSamples, needs: readonly number[]): Int32Array {
  if (seasonCount === 0) throw new RangeError("samples must hold at least one season");
  const out = new Int32Array(seasonCount);
  for (const need of needs)
    for (let season = 0; season < seasonCount; season++) out[season] += shortStems[season * frame.needs.length + need];
  return out;
}
