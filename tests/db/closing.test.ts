import { type ChildProcess, spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { bedsIn, makeFile, withFolder } from "./farm-in-file";

/** A process that keeps a farm open and writes to it until it is told to end, as the server does on the way out. */
const SCRIPT = (file: string) => `
  import { KeptOpen } from "#db/file/kept-open";
  import { addBed } from "#db/write/beds";
  const farm = new KeptOpen(${JSON.stringify(file)});
  const { $client } = farm.database();
  for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => process.exit(0));
  process.on("exit", () => process.send({ isOpen: $client.open }));
  let count = 0;
  setInterval(() => {
    const name = "S" + ++count;
    const bed = { name, lengthMetres: 15, widthMetres: 1.2, flags: [], note: "", neededFrom: null };
    const written = addBed(farm.database(), bed);
    process.send({ name, written });
  }, 5);`;

test.each(["SIGINT", "SIGTERM"] as const)("%s closes the farm: one file, with all that was acknowledged", (signal) =>
  withFolder(async (file, folder) => {
    makeFile(file);
    const server = spawn(process.execPath, ["--import", "tsx", "--input-type=module", "-e", SCRIPT(file)], {
      stdio: ["ignore", "ignore", "inherit", "ipc"],
    });
    const acknowledged: string[] = [];
    const closed = await new Promise<boolean>((resolve) => {
      server.on("message", (message: { name?: string; isOpen?: boolean }) => {
        if (message.isOpen !== undefined) resolve(!message.isOpen);
        else if (message.name && acknowledged.push(message.name) === 10) server.kill(signal);
      });
    });
    await ended(server);
    expect(closed).toBe(true);
    expect(readdirSync(folder)).toEqual(["farm.sqlite"]);
    expect(bedsIn(file)).toEqual(expect.arrayContaining(acknowledged));
  }),
);

const ended = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) resolve();
    else child.once("exit", () => resolve());
  });
