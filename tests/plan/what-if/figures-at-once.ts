import { type FiguresOutcome, figuresTakenSteps } from "#lib/plan/what-if/figures-taken";

/** What taking figures does to a season, step after step to the end. */
export function figuresTaken(...asked: Parameters<typeof figuresTakenSteps>): FiguresOutcome {
  const steps = figuresTakenSteps(...asked);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
