import fc from "fast-check";
import { KeptOpen } from "#db/file/kept-open";
import { kept } from "../db/kept-farm";
import { anyStep } from "../db/steps";

/** A second server on the same file: a process of its own that makes one random write whenever it is told to, and says when it has tried. */

const [file, seed, count] = process.argv.slice(2);
const farm = new KeptOpen(file);
const steps = fc.sample(anyStep, { seed: Number(seed), numRuns: Number(count) });

process.on("message", (index: number) => {
  const database = farm.database();
  const { word, run } = steps[index];
  if (word !== "empty farm") run(database, kept(database));
  process.send?.(word);
});
// Opening a farm may write to its file, as making it ready; what comes after are its random writes alone.
farm.database();
process.send?.("ready");
process.once("disconnect", () => process.exit(0));
