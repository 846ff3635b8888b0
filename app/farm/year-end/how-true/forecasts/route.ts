import { z } from "zod";
import { farmAsked } from "../../../../farm-asked";
import { askedBeds } from "../../../../keep-or-dig/asked-beds";
import { readerOf } from "../../../../threads/reader";
import { streamed } from "../../../../threads/streamed";
import { askHowTrue } from "../ask-how-true";

const questionSchema = z.object({ seasonYear: askedBeds.shape.seasonYear });

/** How true a season's forecasts were, as JSON lines with the forecasts done. Writes nothing. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, questionSchema, "name a season");
  return refusal ?? streamed((told) => askHowTrue(asked.seasonYear, readerOf(request), told));
}
