"use client";

const TRY_AGAIN_MS = 1500;

/**
 * Keeps the framework from leaving an open page because a part of it could not be fetched: without a line it would open the whole address anew, and find
 * nothing. Such a question waits for the line instead. Only where a copy of another page is kept on this phone is that one opened.
 */
export function holdRefreshes(): void {
  const { fetch } = window;
  if ("isHeld" in fetch) return;
  const held: typeof fetch = (input, init) => {
    const asked = new Request(input, init?.method ? { method: init.method } : undefined);
    const isPart = asked.method === "GET" && new Headers(init?.headers).has("rsc");
    if (!isPart || (isElsewhere(asked.url) && hasCopies())) return fetch(input, init);
    return untilThereIsALine(() => fetch(input, init), init?.signal ?? null);
  };
  window.fetch = Object.assign(held, { isHeld: true });
}

const isElsewhere = (url: string): boolean => new URL(url).pathname !== window.location.pathname;

/** Whether a service worker gives the pages that were open before. */
const hasCopies = (): boolean => Boolean(navigator.serviceWorker?.controller);

async function untilThereIsALine(ask: () => Promise<Response>, signal: AbortSignal | null): Promise<Response> {
  for (;;) {
    try {
      return await ask();
    } catch (error) {
      if (signal?.aborted || !(error instanceof TypeError)) throw error;
      await line();
    }
  }
}

/** Over when the browser says that there is a line, or after a while. */
const line = (): Promise<void> =>
  new Promise((resolve) => {
    const go = () => {
      clearTimeout(timer);
      window.removeEventListener("online", go);
      resolve();
    };
    const timer = setTimeout(go, TRY_AGAIN_MS);
    window.addEventListener("online", go);
  });
