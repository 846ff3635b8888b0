import { closeFarm, openKeptFarm } from "#db/client";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { namedFile } from "#db/file/named-file";
import { takeCopy } from "./take-copy";

/** `npm run copy`: takes a copy of the farm (`FARM_FILE`, else `.data/farm.sqlite`) now, also while the tool runs. */
async function runCopy(file: string): Promise<void> {
  const database = openKeptFarm(file);
  try {
    const { copy, secondPlaceProblem } = await takeCopy(database.$client, file, "by-hand");
    console.log(`A copy of ${file}, checked: ${copy.path}`);
    if (secondPlaceProblem) console.error(secondPlaceProblem);
  } finally {
    closeFarm(database);
  }
}

try {
  await runCopy(namedFile());
} catch (error) {
  if (!(error instanceof FarmFileRefused)) throw error;
  console.error(`No copy was taken. ${error.message}`);
  process.exitCode = 1;
}
