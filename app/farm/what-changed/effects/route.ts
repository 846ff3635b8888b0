import { z } from "zod";
import { toDayNumber } from "#lib/domain/day";
import { today } from "../../../clock";
import { farmAsked } from "../../../farm-asked";
import { askedBeds } from "../../../keep-or-dig/asked-beds";
import { loadFarm } from "../../../load";
import { askedOnce } from "../../../threads/asked-once";
import { pool } from "../../../threads/pool";
import { readerOf } from "../../../threads/reader";
import { streamed } from "../../../threads/streamed";

const questionSchema = z.object({ seasonYear: askedBeds.shape.seasonYear });

/** What taking the built-in figures that changed would do to a season, as JSON lines with its progress. Writes nothing. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, questionSchema, "name a season");
  if (refusal) return refusal;
  const { seasonYear } = asked;
  const farm = loadFarm();
  const ask = { seasonYear, todayNumber: toDayNumber(today()) };
  return streamed((told) =>
    askedOnce(
      farm,
      `figures ${seasonYear} ${ask.todayNumber}`,
      (tell) => pool().start(farm, "figures", ask, { reader: readerOf(request), told: tell }),
      told,
    ),
  );
}
