import { writeSync } from "node:fs";
import { restoreCopy } from "#db/copies/restore-copy";
import { takeCopy } from "#db/copies/take-copy";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { KeptOpen } from "#db/file/kept-open";
import { saving } from "#db/journal/saving";
import { addBed } from "#db/write/beds";
import { bed } from "../small-farm";

/** A process that is killed while it works: it says what was acknowledged, one line each, and goes on until it ends by force. */

const [kind, file, ...rest] = process.argv.slice(2);
const said = (line: string) => writeSync(1, `${line}\n`);

/** What a second server's lock refuses in words was not written, and is tried again. */
function patiently<T>(work: () => T): T {
  for (;;) {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof FarmFileRefused) || error.state !== "locked") throw error;
    }
  }
}

const writeForever = (farm: KeptOpen, name: string) => {
  for (let count = 1; ; count++) {
    const save = { key: `${name}-${count}`, fingerprint: "", seenRevision: null };
    const written = patiently(() => {
      const database = farm.database();
      return saving(database, save, () => addBed(database, bed({ id: 0, name: `${name}-${count}` })));
    });
    if (written.ok) said(`${name}-${count}`);
  }
};

const farm = new KeptOpen(file);
patiently(() => farm.database());
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
