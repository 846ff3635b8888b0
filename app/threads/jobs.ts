import type { KeepSureness } from "#lib/plan/chance/keep-sureness";
import type { SeasonSamples } from "#lib/plan/chance/simulation-samples";
import type { ForecastsDone } from "#lib/plan/learning/how-true/how-true";
import type { HowTrue } from "#lib/plan/learning/how-true/truth";
import type { FiguresOutcome } from "#lib/plan/what-if/figures-taken";
import type { OrdersBeside } from "#lib/plan/what-if/orders-beside";
import type { ChoiceProgress, WinterChoice } from "#lib/plan/winter/choose-beds";
import type { FewestBeds, FewestProgress } from "#lib/plan/winter/fewest-beds";
import type { CurvePoint, PointsDone } from "#lib/plan/winter/keep-curve";
import type { SweepPoint, SweptBy } from "#lib/plan/winter/sweep";
import type { BedVerdict } from "#lib/plan/winter/verdicts";

/**
 * The work that takes too long for the server's own thread: what is asked, what is told on the way, and the answer. All of it is plain data
 * that can be sent to a thread and back. Every job is about the farm it is started with.
 */
export type Jobs = {
  /** The cheapest beds to keep, proved. */
  cheapest: { ask: OfSeason; progress: ChoiceProgress; answer: WinterChoice };
  /** The fewest beds that leave the least focal stems short. */
  fewest: { ask: OfSeason; progress: FewestProgress; answer: FewestBeds };
  /** The cheapest choice of at most so many beds, for every number. */
  curve: { ask: OfSeason; progress: PointsDone; answer: readonly CurvePoint[] };
  /** The choice again, for other values of a number of kept beds. */
  sweep: {
    ask: OfSeason & { readonly by: SweptBy; readonly values: readonly number[] };
    progress: PointsDone;
    answer: readonly SweepPoint[];
  };
  /** What each bed is worth, the others as they are; stopped before its end, nothing. */
  verdicts: { ask: OfBeds; progress: null; answer: readonly BedWorth[] };
  /** What standing orders get with these beds kept, and with none. `todayNumber` is a day number. Stopped before its end, null. */
  orders: { ask: OfBeds & { readonly todayNumber: number }; progress: null; answer: OrdersBeside | null };
  /** What taking the built-in figures that changed would do to a season, crop by crop. `todayNumber` is a day number. */
  figures: { ask: OfSeason & { readonly todayNumber: number }; progress: PointsDone; answer: FiguresOutcome };
  /** How true the forecasts of a season were, each worked out again. Stopped before its end, null. */
  howTrue: { ask: OfSeason; progress: ForecastsDone; answer: HowTrue | null };
  /** A run of sampled seasons, walked once for each plan of beds to keep: the same seasons for all. Stopped before its end, null. */
  sample: {
    ask: OfSeason & {
      readonly plans: readonly (readonly number[])[];
      readonly seed: number;
      readonly firstSeason: number;
      readonly seasonCount: number;
    };
    progress: null;
    answer: readonly SeasonSamples[] | null;
  };
  /** What the sampled seasons say of these beds kept, beside every bed dug. */
  sureness: {
    ask: OfBeds & { readonly dug: SeasonSamples; readonly kept: SeasonSamples };
    progress: never;
    answer: KeepSureness;
  };
};
export type JobKind = keyof Jobs;

type OfSeason = { readonly seasonYear: number };
type OfBeds = OfSeason & { readonly keptBedIds: readonly number[] };

/** The part of a bed's verdict that depends on which other beds are kept. */
export type BedWorth = Pick<
  BedVerdict,
  "isKept" | "worthCents" | "matchCents" | "breakEvenShare" | "weeks" | "focalStems" | "wouldBreak"
> & { readonly bedId: number };
