import { type Day, mondayNumber, toDay } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Colour } from "#lib/domain/words";
import { forecast } from "#lib/plan/road/forecast";
import { type WinterBed, withKeptBeds } from "#lib/plan/winter/beds";

/** Stems of one colour of a bed by week, dug and kept, in the order of the weeks. */
export type ColourBloom = {
  readonly colour: Colour;
  readonly dug: readonly number[];
  readonly kept: readonly number[];
};

/** The bloom of every candidate bed under either fate, over the weeks in which any of them blooms. */
export type BedBlooms = {
  readonly mondays: readonly Day[];
  readonly byBed: Readonly<Record<number, readonly ColourBloom[]>>;
};

export function bedBlooms(snapshot: Snapshot, seasonYear: number, beds: readonly WinterBed[]): BedBlooms {
  const ids = beds.map(({ bed }) => bed.id);
  const isCandidate = new Set(beds.flatMap(({ plantings }) => plantings.map(({ kept }) => kept.planting.id)));
  const rowsOf = (keptIds: readonly number[]) =>
    forecast(withKeptBeds(snapshot, seasonYear, keptIds), seasonYear).plantings.filter(({ planting }) =>
      isCandidate.has(planting.id),
    );
  const fates = { dug: rowsOf([]), kept: rowsOf(ids) };
  const weekNumbers = [...fates.dug, ...fates.kept].flatMap(({ cutDays }) =>
    cutDays.length ? [mondayNumber(cutDays[0]), mondayNumber(cutDays[cutDays.length - 1])] : [],
  );
  const first = weekNumbers.reduce((a, b) => Math.min(a, b), Number.MAX_SAFE_INTEGER);
  const last = weekNumbers.reduce((a, b) => Math.max(a, b), 0);
  const weekCount = weekNumbers.length ? (last - first) / 7 + 1 : 0;
  const byBed: Record<number, (ColourBloom & { dug: number[]; kept: number[] })[]> = {};
  for (const fate of ["dug", "kept"] as const)
    for (const { bed, variety, cutDays, cutStems } of fates[fate]) {
      byBed[bed.id] ??= [];
      let bloom = byBed[bed.id].find(({ colour }) => colour === variety.colour);
      if (!bloom) {
        const none = () => new Array<number>(weekCount).fill(0);
        bloom = { colour: variety.colour, dug: none(), kept: none() };
        byBed[bed.id].push(bloom);
      }
      const weeks = bloom[fate];
      cutDays.forEach((day, index) => {
        weeks[(mondayNumber(day) - first) / 7] += cutStems[index];
      });
    }
  return { mondays: Array.from({ length: weekCount }, (_, week) => toDay(first + 7 * week)), byBed };
}
