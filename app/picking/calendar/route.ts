import { calendarFile } from "#lib/sheets/calendar";
import { now } from "../../clock";
import { download } from "../../download";
import { seasonYear } from "../../frame/season-year";
import { loadPlan } from "../../load";

/** The season's picking days and events as a calendar file. */
export const GET = download(async () => {
  const year = await seasonYear();
  return new Response(calendarFile(loadPlan(year), now()), {
    headers: {
      "content-type": "text/calendar; charset=utf-8",
      "content-disposition": `attachment; filename="season-${year}.ics"`,
    },
  });
});
