"use client";

import { READER_HEADER } from "./reader";

/** This page, by a name that no other has; it says nothing of the reader. */
const PAGE = Math.random().toString(36).slice(2);

/** What every question that a page asks the server carries. */
export const posted = (body: string, signal?: AbortSignal): RequestInit => ({
  method: "POST",
  headers: { "content-type": "application/json", [READER_HEADER]: PAGE },
  body,
  signal,
});
