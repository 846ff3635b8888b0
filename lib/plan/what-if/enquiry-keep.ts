import type { Day } from "#lib/domain/day";
import type { Bed } from "#lib/domain/records/bed";
import type { Farm } from "#lib/domain/records/farm-settings";
import { type EnquiryAnswer, enquiryAnswer, needOf } from "#lib/plan/road/enquiry";
import { colourFitCents, cropFitCents } from "#lib/plan/road/fit";
import { forecastPlanting, type PlantingForecast } from "#lib/plan/road/forecast";
import { holdOf, holdWindow } from "#lib/plan/road/hold-window";
import type { Need } from "#lib/plan/road/needs";
import { type Plan, plan } from "#lib/plan/road/plan";
import { poorMatches } from "#lib/plan/road/unusual-years";
import { type WinterBed, winterBeds } from "#lib/plan/winter/beds";
import { keepingTime } from "#lib/plan/winter/keeping-time";
import { keptBedTest } from "#lib/plan/winter/kept-beds";

/** The same enquiry with these beds kept in the ground over the winter before; `answer` is what it then gets. */
export type KeepOffer = { readonly beds: readonly Bed[]; readonly answer: EnquiryAnswer };

/** Beds named in one offer, at most. */
const MOST_BEDS = 3;

/**
 * The fewest beds, those first that would have the most stems for it, which kept in the ground would bring the enquiry the rest, or three of them where
 * they bring a part. Null when the winter is over [K11], no bed may be kept, or none brings a stem [E6]. What keeping costs is Keep or dig's question.
 */
export function keepOffer(stands: Plan, asked: EnquiryAnswer, today: Day): KeepOffer | null {
  const { snapshot, seasonYear } = stands;
  const beds = winterBeds(snapshot, seasonYear);
  if (asked.verdict === "yes" || keepingTime(snapshot, beds, seasonYear, today) === "over") return null;
  const missing = asked.needStems - asked.promisedNeedStems;
  const chosen: WinterBed[] = [];
  let brought = 0;
  for (const { bed, stems } of bedsThatBring(stands, beds, needOf(asked))) {
    if (brought >= missing || chosen.length === MOST_BEDS) break;
    chosen.push(bed);
    brought += stems;
  }
  if (chosen.length === 0) return null;
  const kept = new Map(
    chosen.flatMap(({ plantings }) => plantings.map((row) => [row.kept.planting.id, row.kept.planting])),
  );
  const plantings = snapshot.plantings.map((planting) => kept.get(planting.id) ?? planting);
  const tried = plan({ ...snapshot, plantings }, seasonYear, undefined, stands, stands.today);
  const answer = enquiryAnswer(tried, poorMatches(tried), asked.enquiry);
  return answer.likelyStems > asked.likelyStems ? { beds: chosen.map(({ bed }) => bed), answer } : null;
}

/** Beds that are dug and may be kept, with the stems that keeping each would add to what fits the need in its hold window; most first, none with 0. */
function bedsThatBring(
  { snapshot, forecast, frostDay }: Plan,
  beds: readonly WinterBed[],
  need: Need,
): { bed: WinterBed; stems: number }[] {
  const { farm } = snapshot;
  const isKept = keptBedTest(snapshot);
  const asItStands = new Map(forecast.plantings.map((row) => [row.planting.id, row]));
  const fitting = (row: PlantingForecast | undefined) => (row ? stemsFor(need, row, farm) : 0);
  return beds
    .filter((bed) => bed.forbidden.length === 0 && !isKept(bed))
    .map((bed) => ({
      bed,
      stems: bed.plantings.reduce(
        (sum, { kept }) =>
          sum + fitting(forecastPlanting(kept, farm, frostDay)) - fitting(asItStands.get(kept.planting.id)),
        0,
      ),
    }))
    .filter(({ stems }) => stems > 0)
    .sort((a, b) => b.stems - a.stems || a.bed.bed.id - b.bed.bed.id);
}

/** Stems of a planting that a need could take, cut in its hold window. */
function stemsFor(need: Need, { crop, variety, cutDays, usableStems }: PlantingForecast, farm: Farm): number {
  if (cropFitCents(need, crop) === null || colourFitCents(need, variety.colour) === null) return 0;
  const { earliest, latest } = holdWindow(need.eventDay, need.leadDays, holdOf(crop, farm));
  return cutDays.reduce((sum, day, index) => (day >= earliest && day <= latest ? sum + usableStems[index] : sum), 0);
}
