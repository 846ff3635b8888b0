import { register } from "tsx/esm/api";

/** Starts a thread of the pool: teaches it to read TypeScript first, since a thread does not take that over from the server. */
register();
await import("./worker.ts");
