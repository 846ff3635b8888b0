import type { Selection } from "./problem";

/** Bounds on each switch: 0 and 1 leave it open, both the same bind it. */
export type SwitchBounds = { readonly lowers: Uint8Array; readonly uppers: Uint8Array };

export const openBounds = (switchCount: number): SwitchBounds => ({
  lowers: new Uint8Array(switchCount),
  uppers: new Uint8Array(switchCount).fill(1),
});

/** The bounds with one switch bound more: 0 off, 1 on. */
export function withBound({ lowers, uppers }: SwitchBounds, index: number, value: number): SwitchBounds {
  const bounds = { lowers: lowers.slice(), uppers: uppers.slice() };
  bounds.lowers[index] = value;
  bounds.uppers[index] = value;
  return bounds;
}

export const openSwitches = ({ lowers, uppers }: SwitchBounds): number[] =>
  [...lowers.keys()].filter((index) => lowers[index] < uppers[index]);

/** The nearest selection to one with switches part on. */
export const wholeSelection = (on: ArrayLike<number>): Selection => Array.from(on, (share) => share > 0.5);

/** Whether a switch is all but off or on. */
export const isSure = (share: number): boolean => share < 1e-9 || share > 1 - 1e-9;
