import type { IncomingMessage, RequestListener, ServerResponse } from "node:http";
import { answerWith, bytesOf, type KeptPage, keptPage, nonceOf } from "./kept-page";
import { isKeptPage, keyOf, pageAsked } from "./page-asked";

/** What all kept pages together may take; the ones least lately read go first. */
const KEPT_BYTES_AT_MOST = 64 * 2 ** 20;

/**
 * The screens, with each page rendered once for the farm as it stands: who asks for it again has the same bytes, under a nonce of their own; who
 * asks while it is being rendered waits for it. Rendering a long table costs a hundred times what sending it does.
 *
 * @param screens  renders
 * @param stampOf  changes with every write of the farm and every day; null when that cannot be said, and then nothing is kept
 */
export function keptPages(
  screens: RequestListener,
  stampOf: () => string | null,
  bytesAtMost = KEPT_BYTES_AT_MOST,
): RequestListener {
  let standing: string | null = null;
  const pages = new Map<string, KeptPage>();
  const rendering = new Map<string, Promise<Rendered>>();

  const keep = (key: string, page: KeptPage) => {
    pages.delete(key);
    pages.set(key, page);
    let bytes = [...pages.values()].reduce((sum, kept) => sum + bytesOf(kept), 0);
    for (const [oldest, kept] of pages) {
      if (bytes <= bytesAtMost) return;
      bytes -= bytesOf(kept);
      pages.delete(oldest);
    }
  };

  const render = (stamp: string, key: string, request: IncomingMessage, response: ServerResponse) => {
    const work = noted(request, response, () => screens(request, response)).then((page) => {
      if (typeof page === "object" && stamp === standing && stampOf() === stamp) keep(key, page);
      if (rendering.get(key) === work) rendering.delete(key);
      return page;
    });
    rendering.set(key, work);
  };

  return async (request, response) => {
    const stamp = isKeptPage(request) ? stampOf() : null;
    if (stamp === null) return void screens(request, response);
    if (stamp !== standing) {
      standing = stamp;
      pages.clear();
      rendering.clear();
    }
    const key = keyOf(pageAsked(request));
    for (;;) {
      const page = pages.get(key) ?? (await rendering.get(key)) ?? "left";
      if (page === "unlike") return void screens(request, response);
      if (page === "left") {
        // Nobody renders it now, or who did was left in the midst of it: this reader is the next, unless another was quicker.
        if (rendering.has(key)) continue;
        return render(stamp, key, request, response);
      }
      if (standing === stamp) keep(key, page);
      return answerWith(page, response, nonceOf(request));
    }
  };
}

/** What rendering gave: a page, an answer that is none to keep, or nothing, since its reader left. */
type Rendered = KeptPage | "unlike" | "left";

/** Lets an answer pass to its reader and notes it. */
function noted(request: IncomingMessage, response: ServerResponse, begin: () => void): Promise<Rendered> {
  const chunks: Buffer[] = [];
  const note = (chunk: unknown) => {
    if (typeof chunk === "string" || chunk instanceof Uint8Array) chunks.push(Buffer.from(chunk));
  };
  const { write, end } = response;
  return new Promise((resolve) => {
    Object.assign(response, {
      write: (...said: unknown[]) => {
        note(said[0]);
        return Reflect.apply(write, response, said);
      },
      end: (...said: unknown[]) => {
        note(said[0]);
        resolve(keptPage(response, Buffer.concat(chunks), nonceOf(request)) ?? "unlike");
        return Reflect.apply(end, response, said);
      },
    });
    response.once("close", () => resolve("left"));
    begin();
  });
}
