import { connect } from "node:net";

/** What a server said on a socket until it hung up, or until `withinMs` was over; and whether it hung up itself. */
export type Said = {
  readonly status: number;
  readonly head: string;
  readonly body: string;
  readonly isClosed: boolean;
};

/** Sends bytes as they stand, which no browser and no library would, and hears the answer out. */
export function knock(port: number, bytes: string | Buffer, withinMs = 60_000): Promise<Said> {
  return new Promise((resolve) => {
    const heard: Buffer[] = [];
    const socket = connect(port, "127.0.0.1", () => socket.write(bytes));
    const end = (isClosed: boolean) => {
      clearTimeout(timer);
      socket.destroy();
      const said = Buffer.concat(heard).toString("utf8");
      const [head = "", ...body] = said.split("\r\n\r\n");
      resolve({
        status: Number(/^HTTP\/1\.1 (\d{3})/.exec(head)?.[1] ?? 0),
        head,
        body: body.join("\r\n\r\n"),
        isClosed,
      });
    };
    const timer = setTimeout(() => end(false), withinMs);
    socket.on("data", (bytes) => heard.push(bytes));
    socket.on("close", () => end(true));
    // A connection that is cut while we still write is an answer too.
    socket.on("error", () => {});
  });
}
