import { groupsOf } from "#lib/domain/groups-of";
import { placeKey } from "#lib/plan/road/cut-lots";
import type { Forecast } from "#lib/plan/road/forecast";
import type { ComparedPicking } from "./compared";
import type { FirstCutCame, PickingCame } from "./what-came";

/** What a forecast says of what came: of a first bloom the day it opens, of a first cut its first picking day, of a picking day the stems as far as the record knows of them. */
export function saidBy({ plantings }: Forecast) {
  const byId = new Map(plantings.map((row) => [row.planting.id, row]));
  const byPlace = groupsOf(plantings, ({ planting }) => placeKey(planting));
  return {
    firstCutOf({ plantingId, is }: FirstCutCame): number | null {
      const row = byId.get(plantingId);
      return (is === "first bloom" ? row?.firstCut : row?.cutDays[0]) ?? null;
    },
    stemsOf({ place, day, goodStems, knownUpToStems }: PickingCame): ComparedPicking {
      const stems = (byPlace.get(place) ?? []).reduce(
        (sum, { cutDays, cutStems }) => sum + (cutStems[cutDays.indexOf(day)] ?? 0),
        0,
      );
      return { saidStems: Math.min(stems, knownUpToStems), cameStems: goodStems };
    },
  };
}
