import { expect } from "vitest";
import type { Snapshot } from "#lib/domain/snapshot";
import type { LinearSolver } from "#lib/maths/linear-programme";
import { checkChoice, checkFewest } from "#lib/plan/winter/check-choice";
import { finished, provenChoice, type WinterChoice } from "#lib/plan/winter/choose-beds";
import { type ProvenFewest, provenFewest } from "#lib/plan/winter/fewest-beds";
import { type WinterSeason, winterSeason } from "#lib/plan/winter/season";
import { SEASON } from "./farm";

/** The choice of beds of an invented farm, its certificate checked. */
export function chosen(
  snapshot: Snapshot,
  solver: LinearSolver,
  season = winterSeason(snapshot, SEASON),
): WinterChoice {
  const proven = finished(provenChoice(season, solver));
  expect(checkChoice(season, proven)).toEqual([]);
  return proven.choice;
}

/** The fewest beds of a season, their certificate checked. */
export function fewest(season: WinterSeason, solver: LinearSolver): ProvenFewest {
  const proven = finished(provenFewest(season, solver));
  expect(checkFewest(season, proven)).toEqual([]);
  return proven;
}
