import { quantile } from "#lib/maths/quantile";
import { drawnStems, seasonDraws } from "./season-draws";
import type { WatchedPlanting } from "./season-model";
import type { SeasonPosterior } from "./season-posterior";

/** Stems that some picking days will find ready: in eight seasons of ten between `lowStems` and `highStems`, on average `meanStems`. */
export type Outlook = { readonly lowStems: number; readonly meanStems: number; readonly highStems: number };

const DRAWS = 200;

/**
 * What is to be expected of days to come, group by group and week by week, after all that was seen [O4].
 * @param groupsOf  the groups (of a role, say) that a planting's stems count in
 * @param weeks     the picking days of each week, as day numbers
 * @returns by group, one outlook a week
 */
export function seasonOutlook<Group>(
  posterior: SeasonPosterior,
  groupsOf: (plantingId: number) => readonly Group[],
  weeks: readonly (readonly number[])[],
  drawCount = DRAWS,
): Map<Group, Outlook[]> {
  const watched = new Map(
    posterior.crops.flatMap(({ evidence }) => evidence.map(({ planting }) => [planting.id, planting])),
  );
  const drawn = new Map<Group, Float64Array[]>();
  const days = weeks.flat();
  const isWanted = (id: number): boolean => groupsOf(id).length > 0 && mayBloom(watched.get(id), days);
  const drawAt = seasonDraws(posterior, isWanted);
  for (let season = 0; season < drawCount; season++)
    for (const { plantingId, daysLate, yieldFactor } of drawAt(season)) {
      const groups = groupsOf(plantingId);
      const readyStems = watched.get(plantingId)?.readyStems;
      if (!readyStems) continue;
      weeks.forEach((ofWeek, week) => {
        const expected = ofWeek.map((day) => readyStems(day, daysLate) * yieldFactor);
        const stems = drawnStems(expected, season, plantingId, week);
        for (const group of groups) ofGroup(drawn, group, weeks.length, drawCount)[week][season] += stems;
      });
    }
  return new Map([...drawn].map(([group, ofWeeks]) => [group, ofWeeks.map(outlookOf)]));
}

/** Whether any day finds anything ready, however late or early within four spreads. */
function mayBloom(planting: WatchedPlanting | undefined, days: readonly number[]): boolean {
  if (!planting) return false;
  const most = Math.ceil(4.1 * Math.hypot(planting.sharedSpreadDays, planting.ownSpreadDays));
  for (let late = -most; late <= most; late++) if (days.some((day) => planting.readyStems(day, late) > 0)) return true;
  return false;
}

function ofGroup<Group>(drawn: Map<Group, Float64Array[]>, group: Group, weeks: number, draws: number): Float64Array[] {
  const found = drawn.get(group) ?? Array.from({ length: weeks }, () => new Float64Array(draws));
  drawn.set(group, found);
  return found;
}

/** The tenth below and above of which a further draw falls outside in one case of ten each (Hyndman and Fan's definition 6); needs ten draws. */
function outlookOf(stems: Float64Array): Outlook {
  const sorted = stems.slice().sort();
  const low = (0.1 * (sorted.length + 1) - 1) / (sorted.length - 1);
  return {
    lowStems: quantile(sorted, low),
    meanStems: sorted.reduce((sum, one) => sum + one, 0) / sorted.length,
    highStems: quantile(sorted, 1 - low),
  };
}
