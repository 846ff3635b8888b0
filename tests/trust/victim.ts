import { writeSync } from "node:fs";
import { restoreCopy } from "#db/copies/restore-copy";
import { takeCopy } from "#db/copies/take-copy";
import { KeptOpen } from "#db/file/kept-open";
import { saving } from "#db/journal/saving";
import { addBed } from "#db/write/beds";
import { bed } from "../small-farm";

/** A process that is killed while it works: it says what was acknowledged, one line each, and goes on until it ends by force. */

const [kind, file, ...rest] = process.argv.slice(2);
const said = (line: string) => writeSync(1, `${line}\n`);

const writeForever = (farm: KeptOpen, name: string) => {
  for (let count = 1; ; count++) {
    const save = { key: `${name}-${count}`, fingerprint: "", seenRevision: null };
    const database = farm.database();
    const written = saving(database, save, () => addBed(database, bed({ id: 0, name: `${name}-${count}` })));
    if (written.ok) said(`${name}-${count}`);
  }
};

const farm = new KeptOpen(file);
farm.database();
said("ready");
if (kind === "write") writeForever(farm, rest[0]);
else if (kind === "copy")
  for (let count = 1; ; count++) {
    const database = farm.database();
    addBed(database, bed({ id: 0, name: `C${count}` }));
    const { copy } = await takeCopy(database.$client, file, "by-hand");
    said(copy.path);
  }
else
  for (let count = 0; ; count++) {
    const copy = rest[count % rest.length];
    await restoreCopy(copy, file);
    said(copy);
  }
