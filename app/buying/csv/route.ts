import { purchaseLines } from "#lib/plan/road/purchase-slips";
import { purchaseCsv } from "#lib/sheets/purchase-csv";
import { csvFile } from "../../csv-file";
import { download } from "../../download";
import { loadFarm } from "../../load";

/** What was ordered, as a CSV file. */
export const GET = download(() => csvFile(purchaseCsv(purchaseLines(loadFarm())), "orders.csv"));
