import { calendarFile } from "#lib/export/calendar";
import { now } from "../../clock";
import { loadPlan } from "../../load";
import { seasonYear } from "../../season-year";

/** The season's picking days and events as a calendar file. */
export async function GET(): Promise<Response> {
  const year = await seasonYear();
  return new Response(calendarFile(loadPlan(year), now()), {
    headers: {
      "content-type": "text/calendar; charset=utf-8",
      "content-disposition": `attachment; filename="season-${year}.ics"`,
    },
  });
}
