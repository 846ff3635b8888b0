import type { ChildProcess } from "node:child_process";
import { type IncomingHttpHeaders, request } from "node:http";
import { ended } from "../../browser/demo-in-file";
import { serveBuilt } from "../../browser/served";
import { formsOf, type PageForm } from "../forms-of";
import { builtActions } from "../odd-calls";

/** What somebody sends: a page asked for, a form, or JSON. `from` is the address that it comes from, one of this machine's own. */
export type Question = {
  readonly path: string;
  readonly token?: string | null;
  readonly from?: string;
  readonly form?: readonly (readonly [string, string])[];
  readonly json?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
};
export type Answer = { readonly status: number; readonly body: Buffer; readonly headers: IncomingHttpHeaders };

/** No answer came, whole or at all: the server was killed. */
class LineBroken extends Error {}

const HOST = "127.0.0.2";
const OWNERS_DESK = "127.0.0.5";
const ANSWER_MS = 60_000;

/** The built server, open to the people of a farm, killed and started again at the same address as often as one likes. */
export class FarmLine {
  readonly #env: NodeJS.ProcessEnv;
  readonly #idOf = new Map(builtActions().map(({ name, id }) => [name, id]));
  #server: ChildProcess | null = null;
  #address = "";
  /** All that the server has said in its window. */
  said = "";

  /** @param env  FARM_FILE among it */
  constructor(env: NodeJS.ProcessEnv) {
    this.#env = env;
  }

  async start(): Promise<void> {
    const port = this.#address === "" ? "0" : new URL(this.#address).port;
    const { server, address } = await serveBuilt({ ...this.#env, PORT: port }, ["--people", "--host", HOST]);
    server.stdout?.on("data", (text) => {
      this.said += text;
    });
    [this.#server, this.#address] = [server, address];
  }

  /** Does some work while the server is killed, and starts it anew. What the work did not come to by then is given up. */
  async killedDuring(work: () => Promise<unknown>, afterMs: number): Promise<void> {
    const killing = new Promise((resolve) => setTimeout(resolve, afterMs)).then(() => this.end("SIGKILL"));
    await work().catch((error) => {
      if (!(error instanceof LineBroken)) throw error;
    });
    await killing;
    await this.start();
  }

  async end(signal: NodeJS.Signals = "SIGTERM"): Promise<void> {
    const server = this.#server;
    this.#server = null;
    if (server && server.exitCode === null && server.signalCode === null) await ended(server, signal);
  }

  /** The name of an action on the wire. */
  idOf(action: string): string {
    const id = this.#idOf.get(action);
    if (id === undefined) throw new Error(`no action ${action} was built`);
    return id;
  }

  /** Asks as a browser of our own pages does. @throws LineBroken */
  async ask(question: Question): Promise<Answer> {
    const { path, token = null, from = OWNERS_DESK, form, json, headers = {} } = question;
    const { body, kind } = await bodyOf(form, json);
    const url = new URL(this.#address);
    return new Promise((resolve, reject) => {
      const asking = request(
        {
          ...{ host: url.hostname, port: url.port, path, localAddress: from, agent: false, timeout: ANSWER_MS },
          method: body ? "POST" : "GET",
          headers: {
            ...(token === null ? {} : { cookie: `theme=dark; session=${token}` }),
            ...(body ? { origin: this.#address, "content-type": kind, "content-length": body.length } : {}),
            ...headers,
          },
        },
        (answer) => {
          const parts: Buffer[] = [];
          answer.on("data", (part: Buffer) => parts.push(part));
          answer.on("error", broken);
          answer.on("close", () =>
            answer.complete
              ? resolve({ status: answer.statusCode ?? 0, body: Buffer.concat(parts), headers: answer.headers })
              : broken(new Error("cut short")),
          );
        },
      );
      const broken = (error: Error) => reject(new LineBroken(`${path}: ${error.message}`));
      asking.on("timeout", () => asking.destroy(new Error("no answer")));
      asking.on("error", broken);
      asking.end(body ?? undefined);
    });
  }

  /** The forms of a page that call an action, as it is served to whoever has the token. */
  async forms(path: string, action: string, token: string | null): Promise<PageForm[]> {
    const { body } = await this.ask({ path, token });
    return formsIn(body, path, this.idOf(action));
  }

  /** Sends a form of a page with some fields filled in; null where the page has no such form for them. */
  async send(
    form: PageForm | undefined,
    filled: Readonly<Record<string, string>>,
    who: Pick<Question, "token" | "from">,
  ): Promise<Answer | null> {
    if (!form) return null;
    const fields = form.fields.map(([name, text]) => [name, filled[name] ?? text] as const);
    return this.ask({ path: form.path, form: fields, ...who });
  }
}

/** The forms in a page's HTML that call the action of this name on the wire. */
export const formsIn = (html: Buffer, path: string, actionId: string): PageForm[] =>
  formsOf(path, html.toString()).filter(({ fields }) =>
    fields.some(([name, text]) => name === `$ACTION_ID_${actionId}` || text.includes(`"id":"${actionId}"`)),
  );

/** The session that an answer begins; null when it begins none. */
export const tokenFrom = ({ headers }: Answer): string | null =>
  headers["set-cookie"]?.map((cookie) => /^session=([\w-]+)/.exec(cookie)?.[1]).find((token) => token) ?? null;

async function bodyOf(form: Question["form"], json: unknown): Promise<{ body: Buffer | null; kind: string }> {
  if (json !== undefined) return { body: Buffer.from(JSON.stringify(json)), kind: "application/json" };
  if (!form) return { body: null, kind: "" };
  const data = new FormData();
  for (const [name, text] of form) data.append(name, text);
  const sent = new Response(data);
  return { body: Buffer.from(await sent.arrayBuffer()), kind: sent.headers.get("content-type") ?? "" };
}
