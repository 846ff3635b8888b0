import type { Snapshot } from "#lib/domain/snapshot";
import type { SwitchEffect } from "#lib/maths/switch-flow/problem";
import { buyInFinder } from "#lib/plan/road/buy-in";
import { type Forecast, forecast, forecastPlanting, frostDayOf, type PlantingForecast } from "#lib/plan/road/forecast";
import type { Grown } from "#lib/plan/road/grown";
import { type Match, match } from "#lib/plan/road/match";
import { type MatchNetwork, matchNetwork } from "#lib/plan/road/match-network";
import { type Need, needs } from "#lib/plan/road/needs";
import { pickingDays } from "#lib/plan/road/picking-days";
import { NOTHING_SEEN } from "#lib/plan/road/plants-seen";
import { meetingSeasons } from "#lib/plan/road/seasons";
import { supplyOf, type VarietySupply } from "#lib/plan/road/supply";
import { type WinterBed, winterBeds } from "./beds";

/**
 * A season with every candidate bed's two futures side by side. The network has a supply node for each day on which either future of any
 * bed could be cut, so it is built once: a choice only changes how many stems stand at its nodes. Supplies in it are all beds dug.
 */
export type WinterFutures = {
  readonly snapshot: Snapshot;
  readonly seasonYear: number;
  readonly beds: readonly WinterBed[];
  readonly needs: readonly Need[];
  readonly network: MatchNetwork;
  /** For each bed: stems at its supply nodes when kept, less those when dug; a unit is a stem. */
  readonly effects: readonly SwitchEffect[];
  /** The effect of one bed if its clumps in the ground lived through the winter in this share. */
  readonly effectAt: (bedIndex: number, survivalShare: number) => SwitchEffect;
  /** The match when the beds at these places are kept, every other candidate dug. */
  readonly match: (isKept: readonly boolean[]) => Match;
};

export function winterFutures(snapshot: Snapshot, seasonYear: number): WinterFutures {
  const { farm } = snapshot;
  const beds = winterBeds(snapshot, seasonYear);
  const wintering = new Set(beds.flatMap((bed) => bed.plantings.map(({ dug }) => dug.planting.id)));
  const seasons = meetingSeasons(snapshot, seasonYear);
  const others = seasons
    .flatMap((season) => forecast(snapshot, season).plantings)
    .filter(({ planting }) => !wintering.has(planting.id));
  const nextPickingDay = pickingDays(farm.pickingWeekdays);
  const frostDay = frostDayOf(farm, seasonYear);
  const grow = (row: Grown) => forecastPlanting(row, farm, frostDay, nextPickingDay);
  const forecasts = beds.map((bed) => ({
    dug: bed.plantings.map(({ dug }) => grow(dug)),
    kept: bed.plantings.map(({ kept }) => grow(kept)),
  }));
  const everyDay = beds.flatMap((bed) =>
    bed.plantings.flatMap(({ dug, kept }) => [dug, kept].map((row) => withoutStems(grow(onceADay(row))))),
  );
  const suppliesOf = (grown: Forecast["plantings"]) =>
    supplyOf(snapshot, [...others, ...grown, ...everyDay], ...seasons);
  const asked = needs(snapshot, seasons);
  const buyIn = buyInFinder(snapshot);
  const dugSupplies = suppliesOf(forecasts.flatMap(({ dug }) => dug));
  const network = matchNetwork(farm, dugSupplies, asked, buyIn);
  const nodeOf = nodeFinder(dugSupplies, network);
  return {
    snapshot,
    seasonYear,
    beds,
    needs: asked,
    network,
    effects: forecasts.map(({ dug, kept }) => effectBetween(dug, kept, nodeOf)),
    effectAt: (bedIndex, survivalShare) => {
      const kept = beds[bedIndex].plantings.map((row) =>
        grow({
          ...row.kept,
          planting: { ...row.kept.planting, winterSurvivalShare: survivalShare },
          seen: { ...row.kept.seen, cameThrough: [] },
        }),
      );
      return effectBetween(forecasts[bedIndex].dug, kept, nodeOf);
    },
    match: (isKept) =>
      match(farm, suppliesOf(forecasts.flatMap(({ dug, kept }, bed) => (isKept[bed] ? kept : dug))), asked, buyIn),
  };
}

/** A planting that opens one stem on every day on which it could open any: its picking days are all that there can be. */
const onceADay = (row: Grown): Grown => ({
  ...row,
  planting: {
    ...row.planting,
    plantCount: 1,
    aliveShare: 1,
    winterSurvivalShare: 1,
    gradeOutShare: 0,
  },
  seen: NOTHING_SEEN,
  saleableShare: 1,
  curve: row.curve && {
    ...row.curve,
    stemsPerPlantByWeek: row.curve.stemsPerPlantByWeek.map((stems) => (stems > 0 ? 7 : 0)),
  },
});

const withoutStems = (row: PlantingForecast): PlantingForecast => ({
  ...row,
  cutStems: row.cutStems.map(() => 0),
  usableStems: row.usableStems.map(() => 0),
});

/** The supply node of a variety on a day. */
function nodeFinder(supplies: readonly VarietySupply[], network: MatchNetwork) {
  const found = new Map<string, number>();
  supplies.forEach(({ variety, days }, index) => {
    days.forEach((day, place) => {
      found.set(`${variety.id}/${day}`, network.nodeOf(index, place));
    });
  });
  return (varietyId: number, day: number): number => {
    const node = found.get(`${varietyId}/${day}`);
    if (node === undefined) throw new RangeError(`variety ${varietyId} has no supply node on day ${day}`);
    return node;
  };
}

function effectBetween(
  dug: readonly PlantingForecast[],
  kept: readonly PlantingForecast[],
  nodeOf: (varietyId: number, day: number) => number,
): SwitchEffect {
  const byNode = new Map<number, number>();
  const add = (rows: readonly PlantingForecast[], sign: number) => {
    for (const { variety, cutDays, usableStems } of rows)
      cutDays.forEach((day, index) => {
        if (usableStems[index] === 0) return;
        const node = nodeOf(variety.id, day);
        byNode.set(node, (byNode.get(node) ?? 0) + sign * usableStems[index]);
      });
  };
  add(kept, 1);
  add(dug, -1);
  const changed = [...byNode].filter(([, stems]) => stems !== 0).sort(([a], [b]) => a - b);
  return {
    nodes: Int32Array.from(changed, ([node]) => node),
    units: Int32Array.from(changed, ([, stems]) => stems),
  };
}
