import type { Snapshot } from "#lib/domain/snapshot";
import type { JobKind, Jobs } from "./jobs";

/** A job of any kind as it is sent to a thread. */
export type Asked = { [Kind in JobKind]: { readonly kind: Kind; readonly ask: Jobs[Kind]["ask"] } }[JobKind];

/** What a thread is told. The farm stays with it until another is sent. */
export type ToThread =
  | { readonly type: "farm"; readonly snapshot: Snapshot }
  | { readonly type: "run"; readonly id: number; readonly asked: Asked }
  | { readonly type: "stop"; readonly id: number };

/** What a thread tells. A job that fails says why; the thread goes on. */
export type FromThread =
  | { readonly type: "progress"; readonly id: number; readonly progress: unknown }
  | { readonly type: "done"; readonly id: number; readonly answer: unknown }
  | { readonly type: "failed"; readonly id: number; readonly message: string };
