"use client";

import { useSyncExternalStore } from "react";
import { clockInWords } from "#lib/domain/list-age";
import { momentNow, onTheWall } from "./phone-clock.client";

/** How often the time is looked at. */
const LOOK_MS = 30_000;

/** Now, by the clock on the phone's wall, to the minute: "YYYY-MM-DDThh:mm". Null on the server, which hangs on another wall. */
export const useNow = (): string | null => useSyncExternalStore(eachMinute, nowOnTheWall, () => null);

const nowOnTheWall = (): string => onTheWall(momentNow());

function eachMinute(tell: () => void): () => void {
  const timer = setInterval(tell, LOOK_MS);
  document.addEventListener("visibilitychange", tell);
  return () => {
    clearInterval(timer);
    document.removeEventListener("visibilitychange", tell);
  };
}

/** A moment in UTC as the phone's clock says it: "06:40". Before scripts arrive nothing. */
export function WallClock({ moment }: { readonly moment: string }) {
  const now = useNow();
  return now === null ? null : <time dateTime={moment}>{clockInWords(onTheWall(moment), now)}</time>;
}
