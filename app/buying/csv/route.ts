import { purchaseLines } from "#lib/plan/road/purchase-slips";
import { purchaseCsv } from "#lib/sheets/purchase-csv";
import { download } from "../../download";
import { loadFarm } from "../../load";

/** What was ordered, as a CSV file. The byte order mark tells spreadsheets that it is UTF-8. */
export const GET = download(
  () =>
    new Response(`\uFEFF${purchaseCsv(purchaseLines(loadFarm()))}`, {
      headers: {
        "content-type": "text/csv; charset=utf-8",
        "content-disposition": 'attachment; filename="orders.csv"',
      },
    }),
);
