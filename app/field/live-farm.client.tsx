"use client";

import { usePathname, useRouter } from "next/navigation";
import { useContext, useEffect, useTransition } from "react";
import { isShownBy } from "#lib/domain/unsent";
import { FarmRevision } from "../ui/farm-revision.client";
import { contactNow, heardOf, tellContact } from "./contact.client";
import { holdRefreshes } from "./held-refresh.client";
import { sendUnsent } from "./send-unsent.client";
import { allUnsent, dropUnsent } from "./unsent-store.client";
import { useContact } from "./use-field.client";

/** Screens that follow the farm by themselves. On others somebody may be writing into a form that keeps what it shows. */
const LIVE = /^\/(?:|today|picking(?:\/\w+)?|farm\/cooler|bookings|buying)$/;

/** A page that has just been made anew is not made again for as long as that took, so that a farm with much to do can go on; and no longer than this. */
const LONGEST_REST_MS = 700;
/** A stream that the browser has given up is asked for again after so long. */
const ASK_AGAIN_MS = 20_000;

/** Keeps an open page in touch with the farm: sends what was counted on this phone, and makes the page anew when somebody has written. Draws nothing. */
export function LiveFarm() {
  const revision = useContext(FarmRevision);
  useEffect(() => {
    for (const unsent of allUnsent().filter((one) => isShownBy(one, revision ?? 0))) {
      // With its taking back, a count has gone too.
      if (unsent.tally.of) dropUnsent(unsent.tally.of.key);
      dropUnsent(unsent.tally.key);
    }
  }, [revision]);
  useEffect(() => {
    holdRefreshes();
    return listen();
  }, []);
  useFreshPage(revision);
  return null;
}

/** Hears of the farm as long as the page is looked at: a browser has few lines, and a phone in a pocket needs none. */
function listen(): () => void {
  let source: EventSource | null = null;
  let again: ReturnType<typeof setTimeout> | undefined;
  const stop = () => {
    clearTimeout(again);
    source?.close();
    source = null;
  };
  const start = () => {
    stop();
    if (document.visibilityState === "hidden") return;
    source = new EventSource("/changes");
    source.onmessage = ({ data }) => {
      heardOf(Number(JSON.parse(data).revision));
      sendUnsent();
    };
    source.onerror = () => {
      // Whoever is not let in hears nothing either: then the line is there, and saying that it is lost would send them looking for signal.
      if (contactNow().state !== "not let in") tellContact("lost");
      if (source?.readyState === EventSource.CLOSED) again = setTimeout(start, ASK_AGAIN_MS);
    };
  };
  const lost = () => tellContact("lost");
  const end = new AbortController();
  const { signal } = end;
  window.addEventListener("online", start, { signal });
  window.addEventListener("offline", lost, { signal });
  document.addEventListener("visibilitychange", start, { signal });
  window.addEventListener("pagehide", stop, { signal });
  window.addEventListener("pageshow", start, { signal });
  start();
  sendUnsent();
  return () => {
    end.abort();
    stop();
  };
}

function useFreshPage(revision: number | null): void {
  const path = usePathname();
  const router = useRouter();
  const contact = useContact();
  const [isRefreshing, startRefresh] = useTransition();
  const isBehind = LIVE.test(path) && contact.state === "open" && (contact.revision ?? 0) > (revision ?? 0);
  useEffect(() => {
    if (!isRefreshing) return;
    const begunAt = performance.now();
    return () => {
      const now = performance.now();
      restsUntil = now + Math.min(now - begunAt, LONGEST_REST_MS);
    };
  }, [isRefreshing]);
  useEffect(() => {
    if (!isBehind || isRefreshing) return;
    const refresh = () => {
      if (!isWritten()) startRefresh(() => router.refresh());
    };
    const timer = setTimeout(refresh, Math.max(0, restsUntil - performance.now()));
    // Whoever was writing is done.
    document.addEventListener("focusout", refresh);
    return () => {
      clearTimeout(timer);
      document.removeEventListener("focusout", refresh);
    };
  }, [isBehind, isRefreshing, router]);
}

/** Until when a page that was made anew is not made again. */
let restsUntil = Number.NEGATIVE_INFINITY;

/** Whether something stands in a field that the page did not write there. */
const isWritten = (): boolean =>
  [...document.querySelectorAll("main input, main textarea")].some(
    (field) =>
      (field instanceof HTMLTextAreaElement && field.value !== field.defaultValue) ||
      (field instanceof HTMLInputElement &&
        field.type !== "hidden" &&
        (field.value !== field.defaultValue || field.checked !== field.defaultChecked)),
  );
