import { winterCsv } from "#lib/sheets/winter-csv";
import { today } from "../../../clock";
import { download } from "../../../download";
import { seasonYear } from "../../../frame/season-year";
import { loadFarm } from "../../../load";
import { worksheetOf } from "../load-worksheet";

/** The winter's work as CSV. */
export const GET = download(async () => {
  const year = await seasonYear();
  return new Response(winterCsv(worksheetOf(loadFarm(), year, today())), {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename="winter-${year - 1}-${year}.csv"`,
    },
  });
});
