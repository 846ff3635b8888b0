import { FarmFileRefused } from "#db/file/farm-file-refused";
import { namedFile } from "#db/file/named-file";
import { restoreCopy } from "./restore-copy";

/** `npm run restore -- FILE`: makes the farm (`FARM_FILE`, else `.data/farm.sqlite`) what the copy FILE holds. */
async function runRestore(copy: string, file: string): Promise<void> {
  const { before, setAside } = await restoreCopy(copy, file);
  console.log(`${file} is now what ${copy} holds.`);
  if (before) console.log(`What was there before is kept. To go back: npm run restore -- ${before.path}`);
  if (setAside) console.log(`The file that could not be opened was set aside: ${setAside}`);
}

const copy = process.argv[2];
if (copy === undefined) {
  console.error("Name the copy: npm run restore -- FILE");
  process.exitCode = 1;
} else
  try {
    await runRestore(copy, namedFile());
  } catch (error) {
    if (!(error instanceof FarmFileRefused)) throw error;
    console.error(`Nothing was restored. ${error.message}`);
    process.exitCode = 1;
  }
