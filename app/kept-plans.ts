import type { Snapshot } from "#lib/domain/snapshot";
import { type Plan, plan } from "#lib/plan/road/plan";
import { type Band, seasonBand } from "#lib/plan/road/season-band";

/** Seasons of which the plan is kept: this one, those beside it, and one looked up. A plan of a large farm takes some ten megabytes. */
const SEASONS_KEPT = 4;

type Season = { readonly plan: Plan; band: Band[][] | null };

/**
 * The plans of the seasons asked for last. After a write a season is planned from the plan before it, so that only what the write has touched is
 * worked out again [L3].
 */
export class KeptPlans {
  readonly #seasons = new Map<number, Season>();

  plan = (snapshot: Snapshot, seasonYear: number): Plan => this.#season(snapshot, seasonYear).plan;

  /** The low and high of each week of the season's plan. */
  band(snapshot: Snapshot, seasonYear: number): Band[][] {
    const season = this.#season(snapshot, seasonYear);
    season.band ??= seasonBand(season.plan);
    return season.band;
  }

  #season(snapshot: Snapshot, seasonYear: number): Season {
    const before = this.#seasons.get(seasonYear);
    const season =
      before?.plan.snapshot === snapshot
        ? before
        : { plan: plan(snapshot, seasonYear, undefined, before?.plan), band: null };
    this.#seasons.delete(seasonYear);
    this.#seasons.set(seasonYear, season);
    const [oldest] = this.#seasons.keys();
    if (this.#seasons.size > SEASONS_KEPT) this.#seasons.delete(oldest);
    return season;
  }
}
