import { disks } from "./disks";
import { fileStates } from "./file-states";
import { fuzz } from "./fuzz";
import { journalModes } from "./journal-modes";
import { kills } from "./kills";
import type { Part } from "./part";
import { people } from "./people/people";
import { twoServers } from "./two-servers";

/** `npm run trust [-- part]`: what the tool promises of the farm's records, tried by force. Bounded in count and time, on this machine alone. */

const PARTS: Readonly<Record<string, Part>> = {
  kills,
  "file-states": fileStates,
  disks,
  "journal-modes": journalModes,
  "two-servers": twoServers,
  fuzz,
  people,
};

const asked = process.argv[2];
const scale = Number(process.env.TRUST_SCALE ?? 1);
let faultCount = 0;
for (const [name, part] of Object.entries(PARTS)) {
  if (asked !== undefined && asked !== name) continue;
  const started = performance.now();
  const { title, lines, faults } = await part(scale);
  console.log(`\n${title} (${((performance.now() - started) / 1000).toFixed(0)} s)`);
  for (const line of lines) console.log(`  ${line}`);
  for (const fault of faults) console.log(`  FAULT ${fault}`);
  faultCount += faults.length;
}
console.log(faultCount === 0 ? "\nNo fault." : `\n${faultCount} faults.`);
process.exitCode = faultCount === 0 ? 0 : 1;
