import type { Snapshot } from "#lib/domain/snapshot";
import type { Match } from "#lib/plan/road/match";
import { type Plan, plan } from "#lib/plan/road/plan";
import { type ReachBand, seasonBand } from "#lib/plan/road/season-band";
import { poorMatches } from "#lib/plan/road/unusual-years";

/** Seasons of which the plan is kept: this one, those beside it, and one looked up. A plan of a large farm takes some ten megabytes. */
const SEASONS_KEPT = 4;

type Season = { readonly plan: Plan; band: ReachBand[][] | null; poor: Match[] | null };

/**
 * The plans of the seasons asked for last. After a write a season is planned from the plan before it, so that only what the write has touched is
 * worked out again [L3].
 */
export class KeptPlans {
  readonly #seasons = new Map<number, Season>();

  plan = (snapshot: Snapshot, seasonYear: number): Plan => this.#season(snapshot, seasonYear).plan;

  /** The low and high of each week of the season's plan. */
  band(snapshot: Snapshot, seasonYear: number): ReachBand[][] {
    const season = this.#season(snapshot, seasonYear);
    season.band ??= seasonBand(season.plan);
    return season.band;
  }

  /** The matches of the season's poor years. */
  poor(snapshot: Snapshot, seasonYear: number): Match[] {
    const season = this.#season(snapshot, seasonYear);
    season.poor ??= poorMatches(season.plan);
    return season.poor;
  }

  #season(snapshot: Snapshot, seasonYear: number): Season {
    const before = this.#seasons.get(seasonYear);
    const season =
      before?.plan.snapshot === snapshot
        ? before
        : { plan: plan(snapshot, seasonYear, undefined, before?.plan), band: null, poor: null };
    this.#seasons.delete(seasonYear);
    this.#seasons.set(seasonYear, season);
    const [oldest] = this.#seasons.keys();
    if (this.#seasons.size > SEASONS_KEPT) this.#seasons.delete(oldest);
    return season;
  }
}
