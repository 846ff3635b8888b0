import type { PlantingForecast } from "./forecast";

/**
 * A planting's forecast with the stems of those that took the places of its dead clumps: day by day the sum of the two, so that what opens is still what is
 * cut and lost [F4]. The plants alive stay those that came through.
 */
export function withLateStems(own: PlantingForecast, late: PlantingForecast): PlantingForecast {
  if (late.openedStems === 0) return own;
  const [cut, usable] = [new Map<number, number>(), new Map<number, number>()];
  const add = (stems: Map<number, number>, day: number, more: number) => stems.set(day, (stems.get(day) ?? 0) + more);
  for (const { cutDays, cutStems, usableStems } of [own, late])
    cutDays.forEach((day, index) => {
      add(cut, day, cutStems[index]);
      add(usable, day, usableStems[index]);
    });
  const cutDays = [...cut.keys()].sort((a, b) => a - b);
  return {
    ...own,
    ...openingOfBoth(own, late),
    openedStems: own.openedStems + late.openedStems,
    cutDays,
    cutStems: cutDays.map((day) => cut.get(day) ?? 0),
    usableStems: cutDays.map((day) => usable.get(day) ?? 0),
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
