import { z } from "zod";
import { isSeasonYear } from "#lib/domain/season-years";
import { reviewedSeason } from "#lib/plan/learning/review/reviewed-season";
import { today } from "../../clock";
import { loadFarm } from "../../load";

const query = z.object({ season: z.coerce.number().refine(isSeasonYear).nullable().catch(null) });

/** The season that a review shows: the one that its address names, else that of the last event that is over. What other screens show it leaves alone. */
export const seasonAsked = (asked: unknown): number => query.parse(asked).season ?? reviewedSeason(loadFarm(), today());
