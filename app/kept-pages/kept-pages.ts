import type { IncomingMessage, RequestListener, ServerResponse } from "node:http";
import { allIn } from "./all-in";
import { answerWith, bytesOf, type KeptPage, keptPage, nonceOf } from "./kept-page";
import { isKeptPage, keyOf, pageAsked } from "./page-asked";

/** What all kept pages together may take; the ones least lately read go first. */
const KEPT_BYTES_AT_MOST = 64 * 2 ** 20;

/** A page waits for another that is being rendered no longer than this, in milliseconds: that one may itself wait for something. */
const LONGEST_TURN_MS = 300;

/**
 * The screens, with each page rendered once for the farm as it stands: who asks for it again has the same bytes, under a nonce of their own; who
 * asks while it is being rendered waits for it. Who asks for it after a write, while it is being rendered as it was before, waits for that to end, with all
 * others who do: however fast many write, a page is rendered once at a time. Different pages are rendered one after the other: all at once they would all be
 * done as late as the last. Rendering a long table costs a hundred times what sending it does.
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
  const underWay = new Map<string, Rendering>();
  const knocking = allIn();
  let latest: Promise<unknown> | null = null;

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
    const done = noted(request, response, () => screens(request, response)).then((page) => {
      if (typeof page === "object" && stamp === standing && stampOf() === stamp) keep(key, page);
      underWay.delete(key);
      if (latest === done) latest = null;
      return page;
    });
    underWay.set(key, { stamp, done });
    latest = done;
  };

  return async (request, response) => {
    knocking.note(request, response);
    if (!isKeptPage(request)) return void screens(request, response);
    const key = keyOf(pageAsked(request));
    for (let areAllIn = false, isPatient = true; ; ) {
      // Whoever left while waiting has no page rendered: the framework leaves such an answer alone, and it would never be over.
      if (response.destroyed) return;
      const stamp = stampOf();
      if (stamp === null) return void screens(request, response);
      if (stamp !== standing) {
        standing = stamp;
        pages.clear();
      }
      const kept = pages.get(key);
      if (kept) {
        keep(key, kept);
        return answerWith(kept, response, nonceOf(request));
      }
      const rendering = underWay.get(key);
      if (!rendering && latest && isPatient) {
        isPatient = await isOverWithin(latest, LONGEST_TURN_MS);
        continue;
      }
      if (!rendering && areAllIn) return render(stamp, key, request, response);
      if (!rendering) {
        await knocking.allIn();
        areAllIn = true;
        continue;
      }
      const page = await rendering.done;
      areAllIn = false;
      // It was of the farm before a write, or its reader left in the midst of it: this reader is the next, unless another was quicker.
      if (rendering.stamp !== stamp || page === "left") continue;
      if (page === "unlike") return void screens(request, response);
      return answerWith(page, response, nonceOf(request));
    }
  };
}

/** A page that is being rendered, of the farm as it stood at `stamp`. */
type Rendering = { readonly stamp: string; readonly done: Promise<Rendered> };

/** What rendering gave: a page, an answer that is none to keep, or nothing, since its reader left. */
type Rendered = KeptPage | "unlike" | "left";

/** Waits for work, so long at the most; whether it was over by then. */
const isOverWithin = (work: Promise<unknown>, longestMs: number): Promise<boolean> =>
  new Promise((resolve) => {
    const timer = setTimeout(() => resolve(false), longestMs);
    work.then(() => {
      clearTimeout(timer);
      resolve(true);
    });
  });

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
