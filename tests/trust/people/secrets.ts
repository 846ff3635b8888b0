import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import type { Crew } from "./crew";

/** What a hash of ours begins with, beside the secrets themselves. */
const HASH_MARKS = ["scrypt 131072", "tokenHash", "codeHash"];
const SHEETS = "/farm/files";

/**
 * Where a password, a session, a code or the calendar's key stands that must stand nowhere: in the farm's file, what lies beside it, its copies, what the owner
 * takes along as sheets or copies, and the window of the server. The people's own file may hold hashes, and nothing else of them.
 */
export async function faultsOfSecrets(crew: Crew, folder: string): Promise<string[]> {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((name) => join(folder, name))
    .filter((path) => statSync(path).isFile());
  const texts: [string, string][] = files.map((path) => [path, readFileSync(path, "latin1")]);
  texts.push(["the server's window", crew.line.said], ...(await takenAlong(crew)));
  const faults = texts.flatMap(([where, text]) => {
    const found = [...crew.secrets].filter((secret) => text.includes(secret));
    const isPeople = where.endsWith(".people.json");
    const marks = isPeople ? [] : HASH_MARKS.filter((mark) => text.includes(mark));
    return [...found, ...marks].map((secret) => `${JSON.stringify(secret.slice(0, 6))}… stands in ${where}`);
  });
  for (const path of files)
    if ((statSync(path).mode & 0o077) !== 0) faults.push(`${path} can be read by other accounts`);
  const people = files.filter((path) => path.endsWith(".people.json"));
  if (people.length !== 1) faults.push(`the people are kept in ${people.length} files`);
  return faults;
}

/** All that the owner can take along: each sheet, the workbook as its parts, and the copies. */
async function takenAlong({ line, owner }: Crew): Promise<[string, string][]> {
  const links = new Set<string>();
  for (const page of [SHEETS, "/farm/copies"]) {
    const { body } = await line.ask({ path: page, token: owner });
    for (const [, link] of body.toString().matchAll(/\shref="(\/farm\/(?:files|copies)\/[^"#]+)"/g))
      links.add(link.replaceAll("&amp;", "&"));
  }
  if (links.size < 10) throw new Error(`only ${links.size} files to take along were found`);
  const texts: [string, string][] = [];
  for (const path of links) {
    const { status, body } = await line.ask({ path, token: owner });
    if (status !== 200) throw new Error(`${path} was answered ${status}`);
    const isZip = body.subarray(0, 2).toString() === "PK";
    const parts = isZip ? Object.entries(unzipSync(body)).map(([name, part]) => [name, strFromU8(part, true)]) : [];
    texts.push(
      [path, body.toString("latin1")],
      ...parts.map(([name, part]): [string, string] => [`${path}: ${name}`, part]),
    );
  }
  return texts;
}
