"use client";

import { createContext, type ReactNode } from "react";

/** The last change of the farm when the page was made; null outside a page. */
export const FarmRevision = createContext<number | null>(null);

/** Tells every form of a page of which revision of the farm it is. */
export const OfRevision = ({ revision, children }: { revision: number; children: ReactNode }) => (
  <FarmRevision value={revision}>{children}</FarmRevision>
);
