import { MOST_ADDRESS_LETTERS, mostBodyBytes } from "./limits";

/** What can be known of a request before its body is read. Header names are in small letters. */
export type Knock = {
  readonly method: string;
  readonly target: string;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly hostCount: number;
};

/** Why a request is not let in, in words for whoever sent it. */
export type Refusal = { readonly status: number; readonly words: string };

const refuse = (status: number, words: string): Refusal => ({ status, words });

/** By which names the tool is served, and how; the first name is the one to tell. */
export type Site = { readonly names: readonly string[]; readonly scheme: "http" | "https" };

/** The names by which this machine calls itself. Any other name was made to point here by somebody else. */
export const THIS_MACHINE: Site = { names: ["127.0.0.1", "localhost"], scheme: "http" };

/**
 * Why the tool does not take a request, or null when it may pass. The rules stand in the order in which a stranger meets them; none of them
 * looks into the body.
 *
 * @param port  the port that the server listens at
 */
export function judge(knock: Knock, port: number, site = THIS_MACHINE): Refusal | null {
  return addressRefusal(knock) ?? hostRefusal(knock, port, site) ?? originRefusal(knock, site) ?? bodyRefusal(knock);
}

export const METHODS = ["GET", "HEAD", "POST"];

const hostsAt = (port: number, { names, scheme }: Site): string[] =>
  names.flatMap((name) => [`${name}:${port}`, ...(port === (scheme === "http" ? 80 : 443) ? [name] : [])]);

function addressRefusal({ method, target }: Knock): Refusal | null {
  if (!METHODS.includes(method)) return refuse(405, `${method} is not understood here: the tool knows GET and POST.`);
  if (target.length > MOST_ADDRESS_LETTERS) return refuse(414, "This address is too long.");
  // "//name/" is the address of another site to whoever is sent there, and a backslash is a slash to a browser.
  const path = target.split(/[?#]/, 1)[0] ?? "";
  if (!path.startsWith("/") || path.includes("//") || path.includes("\\") || !isDecodable(path))
    return refuse(400, "This address cannot be read.");
  return null;
}

function isDecodable(path: string): boolean {
  try {
    const plain = decodeURIComponent(path);
    // "." and ".." are steps to elsewhere: browsers walk them before they ask.
    const isStraight = plain.split("/").every((step) => step !== "." && step !== "..");
    return isStraight && !plain.includes("\0") && !plain.includes("\\") && !plain.startsWith("//");
  } catch {
    return false;
  }
}

function hostRefusal({ headers, hostCount }: Knock, port: number, site: Site): Refusal | null {
  const hosts = hostsAt(port, site);
  if (hostCount === 1 && hosts.includes(text(headers.host))) return null;
  const where = site === THIS_MACHINE ? " on the machine itself" : "";
  return refuse(421, `Nothing is served under this name. Open ${site.scheme}://${hosts[0]}${where}.`);
}

/** Browsers say from where a request comes; what they leave out, a page of another site cannot put in. */
function originRefusal({ method, headers }: Knock, { scheme }: Site): Refusal | null {
  const site = text(headers["sec-fetch-site"]);
  if (site !== "" && site !== "same-origin" && site !== "none")
    return refuse(403, "This request comes from another site. Open the tool by its own address.");
  const origin = text(headers.origin);
  const isOwn = origin === `${scheme}://${text(headers.host)}`;
  if (isOwn || (origin === "" && method !== "POST")) return null;
  return refuse(403, "Only the tool's own pages may send this.");
}

function bodyRefusal({ method, target, headers }: Knock): Refusal | null {
  const length = text(headers["content-length"]);
  if (headers["transfer-encoding"] !== undefined) return refuse(411, "Say how long the body is before sending it.");
  if (method !== "POST") return Number(length || 0) > 0 ? refuse(400, "A question has no body.") : null;
  if (!/^\d+$/.test(length)) return refuse(411, "Say how long the body is before sending it.");
  const most = mostBodyBytes(target);
  if (Number(length) > most)
    return refuse(
      413,
      `This is ${inKilobytes(Number(length))} and the most taken here is ${inKilobytes(most)}: send it in parts.`,
    );
  return isKnownKind(headers) ? null : refuse(415, "Send a form of this tool, or JSON as application/json.");
}

/** Forms come as multipart; a form's call with plain arguments comes as text with a header that no other site can add. */
function isKnownKind(headers: Knock["headers"]): boolean {
  const kind = text(headers["content-type"]);
  return (
    isJson(kind) ||
    /^multipart\/form-data *; *boundary=/i.test(kind) ||
    (/^text\/plain(;|$)/i.test(kind) && headers["next-action"] !== undefined)
  );
}

/** Whether a content type says JSON. */
export const isJson = (contentType: string): boolean => /^application\/json *(;|$)/i.test(contentType);

const text = (header: string | string[] | undefined): string => (typeof header === "string" ? header : "");

const inKilobytes = (bytes: number): string => `${Math.ceil(bytes / 1024).toLocaleString("en")} kB`;
