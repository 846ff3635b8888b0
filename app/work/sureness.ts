import type { Snapshot } from "#lib/domain/snapshot";
import { keepPlanOf, winterCentsOf } from "#lib/plan/simulate-keep-plans";
import { comparedKeepPlans } from "#lib/plan/simulated-costs";
import type { SeasonSamples } from "#lib/plan/simulation-samples";
import { summary } from "#lib/plan/simulation-summary";
import { withKeptBeds } from "#lib/plan/winter-beds";
import type { Sureness } from "./jobs";

/** What the same sampled seasons say of every bed dug (`dug`) and of these beds kept (`kept`). */
export function sureness(
  snapshot: Snapshot,
  seasonYear: number,
  keptBedIds: readonly number[],
  dug: SeasonSamples,
  kept: SeasonSamples,
): Sureness {
  const planOf = (ids: readonly number[], samples: SeasonSamples) =>
    keepPlanOf(
      withKeptBeds(snapshot, seasonYear, ids),
      seasonYear,
      ids,
      winterCentsOf(snapshot, seasonYear, ids),
      samples,
    );
  const { aCheaperChance, ...compared } = comparedKeepPlans(planOf(keptBedIds, kept), planOf([], dug));
  const [ofDug, ofKept] = [summary(dug), summary(kept)];
  const before = new Map(ofDug.bookings.map((booking) => [booking.bookingId, booking.coveredChance]));
  const bookings = new Map(snapshot.bookings.map((booking) => [booking.id, booking]));
  return {
    seasonCount: dug.seasonCount,
    cheaperChance: aCheaperChance,
    sameChance: compared.sameChance,
    differenceCents: compared.differenceCents,
    differenceStandardErrorCents: compared.differenceStandardErrorCents,
    focalShortStems: [ofDug.focalShortStems, ofKept.focalShortStems],
    bookings: ofKept.bookings
      .flatMap(({ bookingId, coveredChance }) => {
        const [booking, coveredBefore] = [bookings.get(bookingId), before.get(bookingId)];
        if (!booking || !coveredBefore) return [];
        const { client, eventOn } = booking;
        return [{ bookingId, client, eventOn, covered: [coveredBefore, coveredChance] as const }];
      })
      .sort((a, b) => (a.eventOn < b.eventOn ? -1 : a.eventOn > b.eventOn ? 1 : a.bookingId - b.bookingId)),
  };
}
