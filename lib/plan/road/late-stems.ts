import type { PlantingForecast } from "./forecast";

/**
 * A planting's forecast with the stems of those that took the places of its dead clumps: day by day the sum of the two, so that what opens is still what is
 * cut and lost [F4]. The plants alive stay those that came through.
 */
export function withLateStems(own: PlantingForecast, late: PlantingForecast): PlantingForecast {
  if (late.openedStems === 0) return own;
  const cutOn = new Map<number, number>();
  for (const { cutDays, cutStems } of [own, late])
    cutDays.forEach((day, index) => {
      cutOn.set(day, (cutOn.get(day) ?? 0) + cutStems[index]);
    });
  const cutDays = [...cutOn.keys()].sort((a, b) => a - b);
  return {
    ...own,
    ...openingOfBoth(own, late),
    openedStems: own.openedStems + late.openedStems,
    cutDays,
    cutStems: cutDays.map((day) => cutOn.get(day) ?? 0),
    lostInFieldStems: own.lostInFieldStems + late.lostInFieldStems,
    lostToFrostStems: own.lostToFrostStems + late.lostToFrostStems,
  };
}

function openingOfBoth(a: PlantingForecast, b: PlantingForecast): Pick<PlantingForecast, "opensFrom" | "openingStems"> {
  const opensFrom = Math.min(a.opensFrom, b.opensFrom);
  const endOf = ({ opensFrom: from, openingStems: stems }: PlantingForecast) => from + stems.length;
  const openingStems = new Int32Array(Math.max(endOf(a), endOf(b)) - opensFrom);
  for (const { opensFrom: from, openingStems: stems } of [a, b])
    for (let index = 0; index < stems.length; index++) openingStems[from - opensFrom + index] += stems[index];
  return { opensFrom, openingStems };
}
