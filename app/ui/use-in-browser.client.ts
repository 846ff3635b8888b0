"use client";

import { useSyncExternalStore } from "react";

const never = () => () => {};

/** False on the server and while its page is taken over, true from then on: for drawings that only scripts can style. */
export const useInBrowser = (): boolean =>
  useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
