"use client";

import { PageFailed } from "./frame/page-failed.client";
import "./look/tokens.css";
import "./look/base.css";
import "./look/parts.css";
import { display, text } from "./look/fonts";

/** Something failed where even the frame of the pages could not be made. */
export default function GlobalError(props: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <html lang="en" className={`${display.variable} ${text.variable}`}>
      <body>
        <main id="main">
          <title>This page could not be made · Stems &amp; Saturdays</title>
          <PageFailed {...props} />
        </main>
      </body>
    </html>
  );
}
