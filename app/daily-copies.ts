import { copiesFolder, copiesIn } from "#db/copies/copy-name";
import { takeCopy } from "#db/copies/take-copy";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { giveBackRoom } from "#db/file/give-back-room";
import type { KeptOpen } from "#db/file/kept-open";
import { now } from "./clock";

const HOUR_MS = 3_600_000;

/** Takes the copy of each day, and gives back what room the file does not need, soon after the server has opened the farm and at the first full hour of a new day that it runs. */
export function keepDailyCopies(farm: KeptOpen): void {
  const look = () => {
    takeDaily(farm).catch((error) => {
      console.error(
        "The copy of the day could not be taken.",
        error instanceof FarmFileRefused ? error.message : error,
      );
    });
  };
  setTimeout(look, 1000).unref();
  setInterval(look, HOUR_MS).unref();
}

async function takeDaily(farm: KeptOpen): Promise<void> {
  const day = now().slice(0, 10);
  if (copiesIn(copiesFolder(farm.file), farm.file).some(({ takenAt }) => takenAt.startsWith(day))) return;
  const { secondPlaceProblem } = await takeCopy(farm.database().$client, farm.file, "daily", now());
  if (secondPlaceProblem) console.error(secondPlaceProblem);
  giveBackRoom(farm.database().$client);
}
