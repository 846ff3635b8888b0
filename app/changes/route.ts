import { farmStream } from "./farm-stream";

/** Tells a page that is open whenever the farm changes, as server-sent events: the number of its last change, and nothing of what it was. */
export const GET = (request: Request): Response =>
  new Response(farmStream(request.signal), {
    headers: { "content-type": "text/event-stream", "cache-control": "no-store" },
  });
