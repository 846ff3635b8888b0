/** The pages that are needed in the field: what a helper may open, and what keeps its sense when it is a day old. */
const FIELD_PAGES = ["/today", "/picking", "/picking/print", "/picking/labels", "/farm/cooler", "/beds/buds"];

const NO_PAGE =
  '<!doctype html><html lang="en"><meta name="viewport" content="width=device-width"><title>No signal</title><h1>No signal</h1><p>This page was not open on this phone before. Go to where there is a line, and open it again.</p></html>';

/**
 * The service worker, as the browser gets it. Pages of the field are kept as they were answered last, policy and all, and given where the farm does not answer; the files they are
 * drawn with are kept with them. Nothing else is: what a page asks for, sends or hears goes through as if nobody stood here. Whoever is shown the way in
 * has nothing kept any more.
 *
 * @param buildId  of the tool: what another build kept is dropped
 */
export const workerScript = (buildId: string): string => `"use strict";
const PAGES = ${JSON.stringify(`pages ${buildId}`)};
const FILES = ${JSON.stringify(`files ${buildId}`)};
const FIELD_PAGES = ${JSON.stringify(FIELD_PAGES)};
const PATIENCE_MS = 4000;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(begin()));
self.addEventListener("message", (event) => event.waitUntil(keepAll(event.data)));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (isFile(url)) event.respondWith(file(request));
  else if (request.mode === "navigate") event.respondWith(page(request, url));
});

const isFile = ({ pathname }) => pathname.startsWith("/_next/static/");
const isWayIn = ({ pathname }) => pathname === "/sign-in" || pathname.startsWith("/join/");
const isFieldPage = ({ pathname }) => FIELD_PAGES.includes(pathname);

async function begin() {
  for (const name of await caches.keys()) if (name !== PAGES && name !== FILES) await caches.delete(name);
  await self.clients.claim();
}

/** A page that is open says by which address it and its files are asked for again. */
async function keepAll({ pages = [], files = [] }) {
  const kept = await caches.open(FILES);
  for (const address of files) if (!(await kept.match(address))) await kept.add(address).catch(() => {});
  for (const address of pages) {
    const answer = await fetch(address, { redirect: "manual" }).catch(() => null);
    if (answer && answer.ok) await keep(address, answer);
  }
}

/** A phone without room keeps nothing, and its pages go on as they do with a line. */
async function keep(address, answer) {
  await (await caches.open(PAGES)).put(address, answer).catch(() => {});
}

async function file(request) {
  const kept = await caches.match(request, { cacheName: FILES });
  if (kept) return kept;
  const answer = await fetch(request);
  if (answer.ok) (await caches.open(FILES)).put(request, answer.clone()).catch(() => {});
  return answer;
}

async function page(request, url) {
  const kept = isFieldPage(url) ? await caches.match(request.url, { cacheName: PAGES }) : undefined;
  try {
    const answer = await (kept ? Promise.race([fetch(request), tooLong()]) : fetch(request));
    if (isWayIn(url)) await caches.delete(PAGES);
    else if (isFieldPage(url) && answer.ok) await keep(request.url, answer.clone());
    return answer;
  } catch {
    if (kept) return kept;
    if (url.pathname !== "/today" && (await caches.match(self.location.origin + "/today", { cacheName: PAGES })))
      return Response.redirect("/today", 302);
    return new Response(NOTHING, { status: 503, headers: { "content-type": "text/html; charset=utf-8" } });
  }
}

const tooLong = () => new Promise((_, reject) => setTimeout(() => reject(new Error("no answer")), PATIENCE_MS));

const NOTHING = ${JSON.stringify(NO_PAGE)};
`;
