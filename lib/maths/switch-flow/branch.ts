import { type SwitchBounds, withBound } from "./bounds";
import type { Relaxed } from "./master";
import type { Case } from "./proof";
import type { Prover } from "./prover";

/** A case that is not settled: no selection within its bounds costs less than `bound`, by the weights that stand in `proves` now. */
export type Branch = { readonly bounds: SwitchBounds; readonly bound: number; readonly proves: Case };

/** The branch with a better bound, if what a relaxation says comes near enough to one and its weights prove it. */
export function raised(prover: Prover, branch: Branch, { about, weights }: NonNullable<Relaxed>): Branch {
  if (about < branch.bound) return branch;
  const bound = prover.bound(weights, branch.bounds);
  if (bound <= branch.bound) return branch;
  branch.proves.proof = weights;
  return { ...branch, bound };
}

/** Whether weights on the limits prove that nothing in the branch keeps to them; if so it is settled. */
export function barred(prover: Prover, { bounds, proves }: Branch): boolean {
  const proof = prover.barred(bounds);
  if (proof) proves.proof = proof;
  return proof !== null;
}

/** The branch with every switch bound that, turned against the weights, would cost no less than the best. */
export function withoutDear(prover: Prover, branch: Branch, bestCost: number): Branch {
  const { proof } = branch.proves;
  if (!Number.isFinite(bestCost) || proof.kind !== "costs") return branch;
  let { bounds, proves } = branch;
  for (const { index, value } of prover.dearTurns(proof, bounds, bestCost)) {
    const kept: Case = { proof };
    const turned: Case = { proof };
    proves.proof = { kind: "cases", index, off: value === 0 ? kept : turned, on: value === 0 ? turned : kept };
    bounds = withBound(bounds, index, value);
    proves = kept;
  }
  return { bounds, bound: branch.bound, proves };
}
