import type { OutgoingHttpHeaders, RequestListener, ServerResponse } from "node:http";
import { promisify } from "node:util";
import { gzip } from "node:zlib";

/** What is packed: pages, what is fetched in their place, and the files they are drawn with. What is streamed, or packed already, is not. */
const PACKED =
  /^(?:text\/(?:html|x-component|css|javascript|plain|csv)|application\/(?:javascript|manifest\+json)|image\/svg\+xml)\b/;

/** Less than this is sent as it is, in bytes: the head of an answer is as long. */
const LEAST_BYTES = 1000;

/** Files under names of their own, which never change, packed once, hard. In bytes. */
const KEPT_BYTES_AT_MOST = 16 * 2 ** 20;

const LEVEL = { page: 5, file: 9 } as const;

const packing = promisify(gzip);

/**
 * Packs what goes over the farm's network, where sending is slower than packing (RFC 9110, content coding gzip). Nothing secret stands in a page beside text
 * that its reader could choose: who is signed in is in a cookie alone, and a page's nonce is another one each time.
 */
export function packed(screens: RequestListener): RequestListener {
  const files = new Map<string, Promise<Buffer>>();
  const pages = new WeakMap<Buffer, Promise<Buffer>>();
  let keptBytes = 0;
  /** A page that is kept for its readers is the same bytes for each, and packed once. */
  const packedOnce = (body: Buffer): Promise<Buffer> => {
    const made = pages.get(body) ?? packing(body, { level: LEVEL.page });
    pages.set(body, made);
    return made;
  };
  return (request, response) => {
    const { method, url = "", headers } = request;
    const accepts = String(headers["accept-encoding"] ?? "");
    if (method !== "GET" || !/\bgzip\b/.test(accepts) || headers.range !== undefined) return screens(request, response);
    const isFile = url.startsWith("/_next/static/");
    held(response, (body) => {
      if (!isFile) return packedOnce(body);
      const kept = files.get(url);
      if (kept) return kept;
      const made = packing(body, { level: LEVEL.file });
      if (keptBytes < KEPT_BYTES_AT_MOST) {
        files.set(url, made);
        keptBytes += body.length;
      }
      return made;
    });
    screens(request, response);
  };
}

/** Holds an answer back until it is whole, and sends it packed; one that is not to be packed goes on from its first byte as it came. */
function held(response: ServerResponse, pack: (body: Buffer) => Promise<Buffer>): void {
  const { write, end, writeHead, flushHeaders } = response;
  const chunks: Buffer[] = [];
  const isHeld = () =>
    response.statusCode === 200 &&
    PACKED.test(String(response.getHeader("content-type") ?? "")) &&
    !response.hasHeader("content-encoding");
  const letGo = () => {
    Object.assign(response, { write, end, writeHead, flushHeaders });
  };
  const note = (said: unknown) => {
    if (typeof said === "string" || said instanceof Uint8Array) chunks.push(Buffer.from(said));
  };
  Object.assign(response, {
    flushHeaders: () => {
      if (isHeld()) return;
      letGo();
      response.flushHeaders();
    },
    writeHead: (status: number, ...said: unknown[]) => {
      const headers = said.find((one): one is OutgoingHttpHeaders => typeof one === "object" && one !== null) ?? {};
      for (const [name, value] of Object.entries(headers)) if (value !== undefined) response.setHeader(name, value);
      response.statusCode = status;
      return response;
    },
    write: (...said: unknown[]) => {
      if (isHeld()) {
        note(said[0]);
        for (const one of said) if (typeof one === "function") one();
        return true;
      }
      letGo();
      return Reflect.apply(write, response, said);
    },
    end: (...said: unknown[]) => {
      const isPacked = isHeld();
      const isOnePiece = chunks.length === 0 && Buffer.isBuffer(said[0]);
      if (isPacked && !isOnePiece) note(said[0]);
      const body = isOnePiece ? (said[0] as Buffer) : Buffer.concat(chunks);
      letGo();
      if (!isPacked) return Reflect.apply(end, response, said);
      response.setHeader("vary", [response.getHeader("vary"), "accept-encoding"].filter(Boolean).join(", "));
      if (body.length < LEAST_BYTES) return response.end(body);
      pack(body).then(
        (bytes) => {
          response.setHeader("content-encoding", "gzip");
          response.setHeader("content-length", bytes.length);
          response.end(bytes);
        },
        () => response.end(body),
      );
      return response;
    },
  });
}
