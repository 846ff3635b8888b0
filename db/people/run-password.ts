import { existsSync } from "node:fs";
import { createInterface } from "node:readline";
import { Writable } from "node:stream";
import { namedFile } from "#db/file/named-file";
import { hashOf, passwordProblem } from "./password";
import { PeopleFile, PeopleUnreadable } from "./people-file";

/**
 * `npm run password`: sets the owner's password of the farm (`FARM_FILE`, else `.data/farm.sqlite`), also one that was forgotten, and signs the owner
 * out everywhere. Whoever may run programs here has the farm's file anyway.
 */
async function runPassword(farmFile: string): Promise<void> {
  // A mistyped place, or that of a stick which is out, gets no file of ours.
  if (process.env.FARM_FILE && !existsSync(farmFile))
    throw new Unfit(
      `no farm lies at ${farmFile}. Where this is to be its place, begin it there first: npm start, without --people`,
    );
  const people = new PeopleFile(farmFile);
  people.read();
  const password = await asked("A password for the owner, twelve letters or more (it is not shown): ");
  const problem = passwordProblem(password);
  if (problem) throw new Unfit(problem);
  if (process.stdin.isTTY && (await asked("Once more: ")) !== password) throw new Unfit("the two are not the same");
  const ownerPassword = await hashOf(password);
  people.write((kept) => ({
    ...kept,
    ownerPassword,
    sessions: kept.sessions.filter(({ personId }) => personId !== 0),
  }));
  console.log(
    "The password is set, and the owner is signed out everywhere. Open the farm to its people: npm start -- --people",
  );
}

class Unfit extends Error {}

/** Asks without showing what is typed. */
function asked(question: string): Promise<string> {
  process.stdout.write(question);
  const hidden = new Writable({ write: (_, __, done) => done() });
  const lines = createInterface({ input: process.stdin, output: hidden, terminal: process.stdin.isTTY });
  return new Promise((resolve) => {
    // Where the input ends without a line, nothing was typed.
    lines.once("close", () => resolve(""));
    lines.question("", (answer) => {
      resolve(answer);
      process.stdout.write("\n");
      lines.close();
    });
  });
}

try {
  await runPassword(namedFile());
} catch (error) {
  const isOfDisk = error instanceof Error && "code" in error && "syscall" in error;
  if (!(error instanceof Unfit || error instanceof PeopleUnreadable || isOfDisk)) throw error;
  console.error(`No password was set: ${error.message}.`);
  process.exitCode = 1;
}
