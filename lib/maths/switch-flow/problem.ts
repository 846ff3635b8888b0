import type { FlowNetwork } from "../flow-network";

/** By how many units each of some nodes changes its supply. Nodes differ and ascend; no change is 0. */
export type SwitchEffect = { readonly nodes: Int32Array; readonly units: Int32Array };

/**
 * Which switches to turn on so that the cheapest flow plus the switches' own cost is least. A switch changes the supplies of some nodes
 * while it is on. All numbers are whole.
 */
export type SwitchProblem = {
  /** Supplies as they stand with every switch off. */
  readonly flow: FlowNetwork;
  /** The first so many nodes give, straight to those that want or through one that passes on; effects touch only these. */
  readonly giverCount: number;
  readonly effects: readonly SwitchEffect[];
  /** What turning each switch on costs, beside the flow; below 0 when it saves. */
  readonly switchCost: readonly number[];
  /** What is paid with every switch off, beside the flow. */
  readonly baseCost: number;
};

/** Which switches are on. */
export type Selection = readonly boolean[];

/** Σ weights of the switches that are on is at most `atMost`, exactly. */
export type SwitchLimit = { readonly weights: readonly bigint[]; readonly atMost: bigint };

export const weightOf = ({ weights }: SwitchLimit, selection: Selection): bigint =>
  selection.reduce((sum, isOn, index) => (isOn ? sum + weights[index] : sum), 0n);

/** Whether a selection keeps to every limit. */
export const keepsTo = (limits: readonly SwitchLimit[], selection: Selection): boolean =>
  limits.every((limit) => weightOf(limit, selection) <= limit.atMost);
