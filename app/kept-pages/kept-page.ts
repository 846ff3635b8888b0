import type { IncomingMessage, OutgoingHttpHeaders, ServerResponse } from "node:http";

/** A page as it was answered once, taken apart where it carried the nonce of that answer. */
export type KeptPage = {
  readonly headers: OutgoingHttpHeaders;
  readonly parts: readonly Buffer[];
};

export const bytesOf = ({ parts }: KeptPage): number => parts.reduce((sum, part) => sum + part.length, 0);

/** The nonce that the door gave an answer: the screens read it from the policy in the request. Empty when there is none. */
export const nonceOf = ({ headers }: IncomingMessage): string =>
  /'nonce-([^']+)'/.exec(String(headers["content-security-policy"] ?? ""))?.[1] ?? "";

/** Of one connection or of one answer, or set anew at the door. */
const NOT_KEPT = new Set([
  "connection",
  "content-length",
  "content-security-policy",
  "date",
  "keep-alive",
  "transfer-encoding",
]);

/** Pages and what the browser fetches in their place when a link is followed. */
const KEPT_TYPES = ["text/html", "text/x-component"];

/** A page from an answer that is over; null when it is none that others may be given. */
export function keptPage(response: ServerResponse, body: Buffer, nonce: string): KeptPage | null {
  const headers = response.getHeaders();
  const isPage = KEPT_TYPES.some((type) => String(headers["content-type"] ?? "").startsWith(type));
  const isPlain = headers["content-encoding"] === undefined && headers["set-cookie"] === undefined;
  if (response.statusCode !== 200 || !isPage || !isPlain) return null;
  const kept = Object.entries(headers).filter(([name]) => !NOT_KEPT.has(name));
  return { headers: Object.fromEntries(kept), parts: between(body, nonce) };
}

/** Answers with a kept page, under the nonce of this answer. */
export function answerWith(page: KeptPage, response: ServerResponse, nonce: string): void {
  const link = Buffer.from(nonce);
  for (const [name, said] of Object.entries(page.headers)) if (said !== undefined) response.setHeader(name, said);
  response.setHeader("content-length", bytesOf(page) + (page.parts.length - 1) * link.length);
  // Sent in one piece, the same bytes are packed once for all their readers (app/door/packed.ts).
  if (page.parts.length === 1) return void response.end(page.parts[0]);
  response.cork();
  page.parts.forEach((part, index) => {
    if (index > 0) response.write(link);
    response.write(part);
  });
  response.uncork();
  response.end();
}

function between(body: Buffer, nonce: string): Buffer[] {
  if (nonce === "") return [body];
  const parts: Buffer[] = [];
  let from = 0;
  for (let at = body.indexOf(nonce); at >= 0; at = body.indexOf(nonce, from)) {
    parts.push(body.subarray(from, at));
    from = at + Buffer.byteLength(nonce);
  }
  return [...parts, body.subarray(from)];
}
