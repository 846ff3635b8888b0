import type { Day } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { ObservedChance } from "#lib/maths/observed-chance";
import { comparedSeasonCents, seasonCents, winterCentsOf } from "./simulated-costs";
import type { SeasonSamples } from "./simulation-samples";
import { type Band, coveredChances, shortBand } from "./simulation-summary";

/** How sure a plan of beds is, beside every candidate dug, over the same sampled seasons. Pairs come as [all dug, these kept]. */
export type KeepSureness = {
  readonly seasonCount: number;
  readonly cheaperChance: ObservedChance;
  readonly sameChance: ObservedChance;
  /** What these beds cost more than digging all, on average; below 0 when less. */
  readonly differenceCents: number;
  readonly differenceStandardErrorCents: number;
  readonly focalShortStems: readonly [Band, Band];
  /** In order of the day of the event. */
  readonly bookings: readonly BookingSureness[];
};

/** The chances that none of a booking's stems is short, and that none of its focal stems is (null when it asks for none). */
export type BookingSureness = {
  readonly bookingId: number;
  readonly client: string;
  readonly eventOn: Day;
  readonly covered: readonly [ObservedChance, ObservedChance];
  readonly focalCovered: readonly [ObservedChance, ObservedChance] | null;
};

/**
 * What sampled seasons say of these beds kept.
 * @param dug   samples of the farm with every candidate dug
 * @param kept  the same seasons of the farm with these beds kept
 * @throws RangeError unless both hold the same number of seasons, one or more
 */
export function keepSureness(
  snapshot: Snapshot,
  seasonYear: number,
  keptBedIds: readonly number[],
  dug: SeasonSamples,
  kept: SeasonSamples,
): KeepSureness {
  const centsOf = (ids: readonly number[], samples: SeasonSamples) =>
    seasonCents(samples, winterCentsOf(snapshot, seasonYear, ids));
  const { aCheaperChance, ...compared } = comparedSeasonCents(centsOf(keptBedIds, kept), centsOf([], dug));
  const coveredDug = coveredChances(dug);
  const [focalDug, focalKept] = [coveredChances(dug, "focal"), coveredChances(kept, "focal")];
  const bookings = new Map(snapshot.bookings.map((booking) => [booking.id, booking]));
  return {
    seasonCount: dug.seasonCount,
    cheaperChance: aCheaperChance,
    sameChance: compared.sameChance,
    differenceCents: compared.differenceCents,
    differenceStandardErrorCents: compared.differenceStandardErrorCents,
    focalShortStems: [shortBand(dug, "focal"), shortBand(kept, "focal")],
    bookings: [...coveredChances(kept)]
      .flatMap(([bookingId, coveredChance]) => {
        const [booking, before] = [bookings.get(bookingId), coveredDug.get(bookingId)];
        if (!booking || !before) return [];
        const { client, eventOn } = booking;
        const [focalBefore, focalAfter] = [focalDug.get(bookingId), focalKept.get(bookingId)];
        const focalCovered = focalBefore && focalAfter ? ([focalBefore, focalAfter] as const) : null;
        return [{ bookingId, client, eventOn, covered: [before, coveredChance] as const, focalCovered }];
      })
      .sort((a, b) => (a.eventOn < b.eventOn ? -1 : a.eventOn > b.eventOn ? 1 : a.bookingId - b.bookingId)),
  };
}
