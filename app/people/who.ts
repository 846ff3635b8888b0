import type { AsyncLocalStorage } from "node:async_hooks";
import type { People, Person } from "./people";

/** Who sent the request that is being answered. `person` is null for somebody who is not signed in; `sender` is the address it came from. */
export type Asking = { readonly person: Person | null; readonly token: string | null; readonly sender: string };

/** A farm that is open to its people: the server (app/serve.mjs) puts it here, since it is no part of the bundles that Next makes. */
export type OpenFarm = {
  readonly people: People;
  readonly asking: AsyncLocalStorage<Asking>;
  /** Where phones reach it: "http://192.168.1.20:3100". */
  readonly address: string;
  readonly isEncrypted: boolean;
};

const shared: typeof globalThis & { openFarm?: OpenFarm } = globalThis;

/** The farm as it is open to its people; null when it is served to this machine alone. */
export const openFarm = (): OpenFarm | null => shared.openFarm ?? null;

/** Who asks; null when the tool is served to this machine alone, and whoever sits at it is the owner. Throws where a request came past the door. */
export function asking(): Asking | null {
  if (!shared.openFarm) return null;
  const found = shared.openFarm.asking.getStore();
  if (!found) throw new Error("a request came past the door: nobody knows who sent it");
  return found;
}

/** What whoever asks may see and do. */
export const roleNow = (): Person["role"] | "stranger" => {
  const found = asking();
  return found ? (found.person?.role ?? "stranger") : "owner";
};

/** The name of whoever asks, where that is not the owner: they take back only what is their own. */
export const notTheOwner = (): string | undefined =>
  roleNow() === "owner" ? undefined : (asking()?.person?.name ?? "");
