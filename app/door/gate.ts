import { timingSafeEqual } from "node:crypto";
import { readFileSync } from "node:fs";
import type { IncomingMessage } from "node:http";
import { z } from "zod";
import { mayCall, mayOpen } from "../people/allowed";
import { HOMES } from "../people/homes";
import { isPlainFile } from "../people/plain-files";
import type { Role } from "../people/roles";
import { tokenIn } from "../people/session-cookie";
import type { Asking, OpenFarm } from "../people/who";
import type { Refusal } from "./judge";

/** What the gate says of a request before its body is read. */
export type Admission =
  | { readonly kind: "in"; readonly asking: Asking; readonly role: Role }
  | { readonly kind: "sent"; readonly to: string }
  | { readonly kind: "refused"; readonly refusal: Refusal };

/** Stands behind the door of a farm that is open to its people, and lets each through to what is theirs. */
export type Gate = {
  readonly admits: (request: IncomingMessage) => Admission;
  /** Why actions may not be called by those who have this role; null when they may. Actions go by their names on the wire. */
  readonly callRefusal: (role: Role, actionIds: readonly string[]) => Refusal | null;
  readonly letThrough: (asking: Asking, work: () => void) => void;
};

/** The header by which the tool asks itself for pages ahead of their readers, and the header that then says whose. */
export const OWN_ASKING = "own-asking";
export const ROLE_HEADER = "x-role";

/**
 * @param secret  known to this process alone: whoever says it is the tool itself
 * @param nameOf  an action's name in {@link ACTIONS}, by its name on the wire
 */
export const gate = (
  { people, asking }: OpenFarm,
  secret: string,
  nameOf: ReadonlyMap<string, string> = builtActionNames(),
): Gate => ({
  admits: (request) => {
    if (isSaid(request.headers[OWN_ASKING], secret)) return ownAsking(request.headers[ROLE_HEADER]);
    const token = tokenIn(request.headers.cookie);
    const person = token === null ? null : people.whoHas(token);
    const role = person?.role ?? "stranger";
    const refused = pathRefused(role, request);
    return refused ?? { kind: "in", role, asking: { person, token, sender: request.socket.remoteAddress ?? "" } };
  },
  callRefusal: (role, actionIds) =>
    role === "owner" || (actionIds.length > 0 && actionIds.every((id) => mayCall(role, nameOf.get(id) ?? "")))
      ? null
      : NOT_YOURS,
  letThrough: (who, work) => asking.run(who, work),
});

const NOT_YOURS: Refusal = { status: 403, words: "This is for the owner of the farm." };
const SIGN_IN_FIRST: Refusal = { status: 401, words: "Sign in first." };

function ownAsking(said: string | string[] | undefined): Admission {
  const role = z.enum(["helper", "designer", "owner"]).catch("owner").parse(said);
  return { kind: "in", role, asking: { person: { id: -1, name: "", role }, token: null, sender: "" } };
}

/** Where somebody is sent, or with what words, who may not open a path; null when they may. */
function pathRefused(role: Role, { method, url = "", headers }: IncomingMessage): Admission | null {
  const path = url.split(/[?#]/, 1)[0];
  // A dot or a per cent sign could mean another page to the framework; no page that is not the owner's has one.
  if (mayOpen(role, path) && (role === "owner" || !/[.%]/.test(path) || isPlainFile(path))) return null;
  const isPage = (method === "GET" || method === "HEAD") && headers.rsc === undefined;
  if (isPage && role === "stranger") return { kind: "sent", to: HOMES.stranger };
  if (isPage) return { kind: "sent", to: path === "/" ? HOMES[role] : "/not-yours" };
  return { kind: "refused", refusal: role === "stranger" ? SIGN_IN_FIRST : NOT_YOURS };
}

function isSaid(said: string | string[] | undefined, secret: string): boolean {
  const [a, b] = [Buffer.from(String(said ?? "")), Buffer.from(secret)];
  return a.length === b.length && timingSafeEqual(a, b);
}

const manifestSchema = z.object({
  node: z.record(z.string(), z.object({ filename: z.string(), exportedName: z.string() })),
});

/** Every action of the built app, as the framework lists them. */
function builtActionNames(): Map<string, string> {
  const { node } = manifestSchema.parse(
    JSON.parse(readFileSync(".next/server/server-reference-manifest.json", "utf8")),
  );
  return new Map(
    Object.entries(node).map(([id, { filename, exportedName }]) => [
      id,
      `${filename.replace(/^app\//, "")}#${exportedName}`,
    ]),
  );
}
