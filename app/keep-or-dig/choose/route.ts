import { z } from "zod";
import { withExpectedBookings } from "#lib/plan/winter/expected-bookings";
import type { SweptBy } from "#lib/plan/winter/sweep";
import { today } from "../../clock";
import { farmAsked } from "../../farm-asked";
import { loadFarm } from "../../load";
import { askedOnce, type Told } from "../../threads/asked-once";
import { pool } from "../../threads/pool";
import { readerOf } from "../../threads/reader";
import { streamed } from "../../threads/streamed";
import { askedBeds } from "../asked-beds";

const questionSchema = z.object({
  question: z.enum(["cheapest", "fewest", "curve", "sweep"]),
  seasonYear: askedBeds.shape.seasonYear,
  by: z.enum(["survival", "first cut", "stems"]).default("survival"),
});

/** The values that the choice is made again for: shares alive, days later, factors of the stems. */
const VALUES: Readonly<Record<SweptBy, readonly number[]>> = {
  survival: [0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
  "first cut": [-14, -7, 0, 7, 14, 21, 28],
  stems: [0.4, 0.55, 0.7, 0.85, 1, 1.15],
};

/** Answers a question about which beds to keep, as JSON lines with its progress. Writes nothing. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, questionSchema, "this is not one of the questions");
  if (refusal) return refusal;
  const { question, seasonYear, by } = asked;
  // Kept under the farm as it is loaded: the pages' stamp counts its answers.
  const farm = loadFarm();
  const expected = withExpectedBookings(farm, seasonYear, today());
  const reader = readerOf(request);
  const start = (told: Told) =>
    question === "sweep"
      ? pool().start(expected, question, { seasonYear, by, values: VALUES[by] }, { reader, told })
      : pool().start(expected, question, { seasonYear }, { reader, told });
  return streamed((told) =>
    askedOnce(farm, question === "sweep" ? `sweep ${by} ${seasonYear}` : `${question} ${seasonYear}`, start, told),
  );
}
