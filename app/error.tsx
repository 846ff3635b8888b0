"use client";

import { PageFailed } from "./frame/page-failed.client";

/** Something failed while a page was made. */
export default function ErrorPage(props: { error: Error & { digest?: string }; reset: () => void }) {
  return <PageFailed {...props} />;
}
