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
 * worked out again [L3]. A new day is a new plan [T1]; `today` is a day number.
 */
export class KeptPlans {
  readonly #seasons = new Map<number, Season>();

  plan = (snapshot: Snapshot, seasonYear: number, today: number): Plan =>
    this.#season(snapshot, seasonYear, today).plan;

  /** The low and high of each week of the season's plan. */
  band(snapshot: Snapshot, seasonYear: number, today: number): ReachBand[][] {
    const season = this.#season(snapshot, seasonYear, today);
    season.band ??= seasonBand(season.plan);
    return season.band;
  }

  /** The matches of the season's poor years. */
  poor(snapshot: Snapshot, seasonYear: number, today: number): Match[] {
    const season = this.#season(snapshot, seasonYear, today);
    season.poor ??= poorMatches(season.plan);
    return season.poor;
  }

  #season(snapshot: Snapshot, seasonYear: number, today: number): Season {
    const before = this.#seasons.get(seasonYear);
    const season =
      before?.plan.snapshot === snapshot && before.plan.today === today
        ? before
        : { plan: plan(snapshot, seasonYear, undefined, before?.plan, today), band: null, poor: null };
    this.#seasons.delete(seasonYear);
    this.#seasons.set(seasonYear, season);
    const [oldest] = this.#seasons.keys();
    if (this.#seasons.size > SEASONS_KEPT) this.#seasons.delete(oldest);
    return season;
  }
}
