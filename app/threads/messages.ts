import type { Snapshot } from "#lib/domain/snapshot";
import type { JobKind, Jobs } from "./jobs";

/** A job of some kind as it is sent to a thread. */
export type AskedOf<Kind extends JobKind> = {
  [Each in Kind]: { readonly kind: Each; readonly ask: Jobs[Each]["ask"] };
}[Kind];
export type Asked = AskedOf<JobKind>;

/**
 * What a thread is told. A farm stays with it, under its number, until it is told to forget it. `stop` is memory that both sides see:
 * 1 in it stops the job, heard between any two of its steps.
 */
export type ToThread =
  | { readonly type: "farm"; readonly farmId: number; readonly snapshot: Snapshot }
  | { readonly type: "forget"; readonly farmId: number }
  | {
      readonly type: "run";
      readonly id: number;
      readonly farmId: number;
      readonly asked: Asked;
      readonly stop: Int32Array<SharedArrayBuffer>;
    };

/** What a thread tells. A job that fails says why; the thread goes on. */
export type FromThread =
  | { readonly type: "progress"; readonly id: number; readonly progress: unknown }
  | { readonly type: "done"; readonly id: number; readonly answer: unknown }
  | { readonly type: "failed"; readonly id: number; readonly message: string };
