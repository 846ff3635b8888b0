import { z } from "zod";
import { toDayNumber, yearOf } from "#lib/domain/day";
import { isSeasonYear } from "#lib/domain/season-years";
import { seasonsOver } from "#lib/plan/learning/review/curve-proposals";
import { today } from "../../../clock";
import { loadFarm } from "../../../load";

const query = z.object({ season: z.coerce.number().refine(isSeasonYear).nullable().catch(null) });

/** The season whose forecasts are looked at: the one that an address names, else the last that was recorded and is over, else this year's. */
export const lookedBackOn = (asked: unknown): number =>
  query.parse(asked).season ?? seasonsOver(loadFarm(), toDayNumber(today())).at(-1) ?? yearOf(today());
