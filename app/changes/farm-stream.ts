import { today } from "../clock";
import { farmRevision } from "../load";

/** How often it is looked whether somebody has written, and how often a line that is quiet is shown to be there. */
const LOOK_MS = 50;
const BEAT_MS = 15_000;
/** After so long a stream ends, and its page asks anew: whoever is let in no more is out then. */
const LIFE_MS = 300_000;
/** What the browser waits before it asks anew. */
const RETRY_MS = 1000;

type Tell = (line: string | null) => void;

const listeners = new Set<Tell>();
let timer: NodeJS.Timeout | undefined;
let told = "";
let toldAt = 0;

/** The farm's last change and its day: said at once, at each write of whoever it may be, and every quarter of a minute. Ends with `signal`. */
export function farmStream(signal: AbortSignal): ReadableStream<Uint8Array> {
  let leave = () => false;
  return new ReadableStream({
    start: (controller) => {
      const bytes = new TextEncoder();
      const end = () => {
        if (leave()) controller.close();
      };
      const tell: Tell = (line) => (line === null ? end() : controller.enqueue(bytes.encode(line)));
      const life = setTimeout(end, LIFE_MS);
      leave = () => {
        clearTimeout(life);
        return listeners.delete(tell);
      };
      signal.addEventListener("abort", end);
      listeners.add(tell);
      tell(`retry: ${RETRY_MS}\n\n${lineIfRead() ?? ""}`);
      lookAfter();
    },
    // Whoever leaves has closed the stream already.
    cancel: () => void leave(),
  });
}

const lineNow = (): string => `data: ${JSON.stringify({ revision: farmRevision(), day: today() })}\n\n`;

/** Looks while somebody listens, once for all of them. */
function lookAfter(): void {
  if (timer) return;
  timer = setInterval(look, LOOK_MS);
  timer.unref();
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, endAll);
}

function look(): void {
  if (listeners.size === 0) {
    clearInterval(timer);
    timer = undefined;
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.off(signal, endAll);
    return;
  }
  const line = lineIfRead();
  toldAt += LOOK_MS;
  if (line === null || (line === told && toldAt < BEAT_MS)) return;
  told = line;
  toldAt = 0;
  for (const tell of listeners) tell(line);
}

/** Null while the farm cannot be read: its page says so. */
function lineIfRead(): string | null {
  try {
    return lineNow();
  } catch {
    return null;
  }
}

function endAll(): void {
  for (const tell of listeners) tell(null);
}
