"use client";

import { useContext, useEffect, useSyncExternalStore } from "react";
import { FarmRevision } from "../ui/farm-revision.client";

/** A page that has changed is kept anew after so long. */
const KEEP_AFTER_MS = 20_000;

const WORDS = {
  both: "Without signal it goes on, and starts anew too.",
  "this page alone":
    "Without signal it goes on as long as this page stays open; it cannot start anew, since the line to the farm’s computer has no certificate.",
};

/** Keeps this page on the phone where the line is secure, and says whether the tool starts without signal there, or this open page alone goes on. */
export function FieldStart() {
  const revision = useContext(FarmRevision);
  const canStart = useSyncExternalStore(noNews, isSecure, () => null);
  useEffect(() => {
    if (!canStart) return;
    navigator.serviceWorker.register("/field-worker").catch(() => {
      // A certificate that the phone does not trust: the page goes on as it does without one.
      refused = true;
    });
  }, [canStart]);
  useEffect(() => {
    if (!canStart || revision === null) return;
    const timer = setTimeout(keepThisPage, kept ? KEEP_AFTER_MS : 0);
    return () => clearTimeout(timer);
  }, [canStart, revision]);
  return canStart === null ? null : <span>{WORDS[canStart ? "both" : "this page alone"]}</span>;
}

let refused = false;
let kept = false;

const noNews = () => () => {};
const isSecure = (): boolean => !refused && window.isSecureContext && "serviceWorker" in navigator;

/** Has the worker keep the page as it stands now, Today with it, and the files they are drawn with. */
async function keepThisPage(): Promise<void> {
  const { active } = await navigator.serviceWorker.ready;
  const files = performance.getEntriesByType("resource").map(({ name }) => name);
  const { origin, href } = window.location;
  active?.postMessage({
    pages: [...new Set([`${origin}/today`, href.split("#", 1)[0]])],
    files: files.filter((name) => name.startsWith(`${origin}/_next/static/`)),
  });
  kept = true;
}
