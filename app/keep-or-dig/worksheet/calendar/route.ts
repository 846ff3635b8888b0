import { winterCalendar } from "#lib/sheets/winter-calendar";
import { now, today } from "../../../clock";
import { download } from "../../../download";
import { seasonYear } from "../../../frame/season-year";
import { loadFarm } from "../../../load";
import { worksheetOf } from "../load-worksheet";

/** The winter's work as a calendar file. */
export const GET = download(async () => {
  const year = await seasonYear();
  const snapshot = loadFarm();
  return new Response(winterCalendar(worksheetOf(snapshot, year, today()), snapshot.farm, year, now()), {
    headers: {
      "content-type": "text/calendar; charset=utf-8",
      "content-disposition": `attachment; filename="winter-${year - 1}-${year}.ics"`,
    },
  });
});
