import { randomBytes } from "node:crypto";
import type { RequestListener } from "node:http";
import { isKeptPage, keyOf, type PageAsked, pageAsked } from "./page-asked";

/** How long nobody must have been answered before a page is rendered ahead, in milliseconds: our own judgement. Where many count, there is no such pause. */
const QUIET_MS = 1000;
/** Between two pages, in milliseconds: whoever knocked while one was rendered is let in. */
const BETWEEN_MS = 10;
/** So many pages that were read last are rendered again after a write. */
const LATELY_COUNT = 12;
/** The header that tells our own asking from a reader's. */
const OWN = "page-ahead";

/** Where open pages hear of the farm's changes. */
const LISTENING = "/changes";

/** Asks the server itself for a page; done once it has been rendered, rejected when it failed. */
export type Ask = (page: PageAsked) => Promise<void>;

/**
 * The kept pages, rendered ahead while nobody asks for anything: soon after the start the main screens, after a write those that were read last, the
 * last one first. One at a time, and none is begun while a reader is being answered: she waits for one page at most.
 *
 * @param pages    answers, and keeps what it renders
 * @param stampOf  changes with every write of the farm; null as long as no page was asked for
 * @param first    addresses that the first readers are likely to ask for, the likeliest first
 */
export function readAhead(
  pages: RequestListener,
  stampOf: () => string | null,
  first: readonly string[],
  ask: Ask,
  quietMs = QUIET_MS,
): RequestListener {
  const mark = randomBytes(16).toString("hex");
  /** The one read last is the last. */
  const lately = new Map<string, PageAsked>();
  let readerCount = 0;
  let timer: NodeJS.Timeout | undefined;
  let isAtWork = false;
  let aheadOf: string | null = null;

  const note = (page: PageAsked) => {
    const key = keyOf(page);
    lately.delete(key);
    lately.set(key, page);
    const [oldest] = lately.keys();
    if (lately.size > LATELY_COUNT) lately.delete(oldest);
  };

  /** Whether the page was made. One that fails says so to the reader who asks for it. */
  const askOwn = ({ url, headers }: PageAsked): Promise<boolean> =>
    ask({ url, headers: { ...headers, [OWN]: mark } }).then(
      () => true,
      () => false,
    );

  const go = async () => {
    if (isAtWork || (stampOf() !== null && stampOf() === aheadOf)) return;
    isAtWork = true;
    const wanted = [...lately.values()].toReversed();
    // As long as nobody has asked, the farm is not read: the first page reads it, and is asked for once more to be kept.
    if (stampOf() === null && readerCount === 0) await askOwn(wanted[0]);
    const stamp = stampOf();
    let isWhole = true;
    for (const page of wanted) {
      await new Promise((resolve) => setTimeout(resolve, BETWEEN_MS));
      isWhole = readerCount === 0 && stampOf() === stamp;
      // Where one page fails, the others are likely to: nothing is tried again before the next reader has come.
      if (!isWhole || !(await askOwn(page))) break;
    }
    isAtWork = false;
    if (isWhole && stampOf() === stamp) aheadOf = stamp;
    else wait();
  };

  const wait = () => {
    clearTimeout(timer);
    if (readerCount === 0) timer = setTimeout(go, quietMs).unref();
  };

  for (const url of first.toReversed()) note({ url, headers: {} });
  wait();
  return (request, response) => {
    const isOwn = request.headers[OWN] === mark;
    delete request.headers[OWN];
    // A page that only listens is no reader: it is answered for as long as it is open.
    if (!isOwn && request.url !== LISTENING) {
      readerCount++;
      response.once("close", () => {
        readerCount--;
        wait();
      });
      // A page with somebody's own change on it is theirs, and is not rendered for nobody.
      if (isKeptPage(request) && !/(^|; *)saved=/.test(request.headers.cookie ?? "")) note(pageAsked(request));
    }
    pages(request, response);
  };
}
