import { readFileSync } from "node:fs";
import { workerScript } from "./worker-script";

/** The service worker of the pages that are needed in the field: another one for each build of the tool, so that what an older one kept is dropped. */
export const GET = (): Response =>
  new Response(workerScript(buildId()), {
    headers: { "content-type": "text/javascript; charset=utf-8", "cache-control": "no-cache" },
  });

const buildId = (): string => readFileSync(".next/BUILD_ID", "utf8").trim();
