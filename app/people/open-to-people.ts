import { AsyncLocalStorage } from "node:async_hooks";
import { networkInterfaces } from "node:os";
import { namedFile } from "#db/file/named-file";
import { type Gate, gate } from "../door/gate";
import type { Site } from "../door/judge";
import { People } from "./people";
import type { Asking, OpenFarm } from "./who";

const shared: typeof globalThis & { openFarm?: OpenFarm } = globalThis;

/**
 * Opens the farm to its people, and gives the gate that stands before the screens from then on; null, with nothing opened, as long as the owner has no
 * password. @param addressOf  where phones reach it, once the server listens
 */
export function openToPeople(secret: string, addressOf: () => string, isEncrypted: boolean): Gate | null {
  const people = new People(namedFile());
  if (!people.hasPassword) return null;
  const open: OpenFarm = {
    people,
    asking: new AsyncLocalStorage<Asking>(),
    isEncrypted,
    get address() {
      return addressOf();
    },
  };
  shared.openFarm = open;
  return gate(open, secret);
}

/**
 * The names by which the farm is served: those that its certificate vouches for first, then those of the network.
 * @param host       where the server listens; 0.0.0.0 is everywhere
 * @param certified  names of a certificate of one's own
 */
export function siteOf(host: string, scheme: Site["scheme"], certified: readonly string[] = []): Site {
  if (host !== "0.0.0.0") return { names: [...new Set([...certified, host])], scheme };
  const found = Object.values(networkInterfaces()).flatMap((addresses) => addresses ?? []);
  const outside = found.filter(({ family, internal }) => family === "IPv4" && !internal).map(({ address }) => address);
  return { names: [...new Set([...certified, ...outside, "127.0.0.1", "localhost"])], scheme };
}
