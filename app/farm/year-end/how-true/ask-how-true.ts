import { loadFarm } from "../../../load";
import { askedOnce, type Told, type Work } from "../../../threads/asked-once";
import { pool } from "../../../threads/pool";

/** Asks on a thread how true a season's forecasts were; once for the farm as it stands, however many ask. */
export function askHowTrue(seasonYear: number, reader: string, told: Told = () => {}): Work {
  const farm = loadFarm();
  return askedOnce(
    farm,
    `how true ${seasonYear}`,
    (tell) => pool().start(farm, "howTrue", { seasonYear }, { reader, told: tell }),
    told,
  );
}
