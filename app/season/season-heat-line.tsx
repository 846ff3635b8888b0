import { toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { seasonHeat } from "#lib/plan/road/season-heat";
import { seasonHeatInWords } from "#lib/plan/words/weather-words";
import { today } from "../clock";

/** The season's warmth beside the usual year's, in days early or late; nothing where no weather of the season is recorded. */
export function SeasonHeatLine({ snapshot, seasonYear }: { snapshot: Snapshot; seasonYear: number }) {
  const heat = seasonHeat(snapshot, seasonYear, toDayNumber(today()));
  return heat && <p className="small">{seasonHeatInWords(heat, snapshot.farm.units)}</p>;
}
