"use client";

import { useEffect } from "react";

/** Whoever is shown the way in has nothing of the farm on this device any more. What was counted and not sent stays: it is nobody's but who counted it. */
export function ForgetPages() {
  useEffect(() => {
    if ("caches" in window) void forgetPages();
  }, []);
  return null;
}

async function forgetPages(): Promise<void> {
  for (const name of await caches.keys()) if (name.startsWith("pages ")) await caches.delete(name);
}
