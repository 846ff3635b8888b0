import { winterCsv } from "#lib/sheets/winter-csv";
import { today } from "../../../clock";
import { csvFile } from "../../../csv-file";
import { download } from "../../../download";
import { seasonYear } from "../../../frame/season-year";
import { loadFarm } from "../../../load";
import { worksheetOf } from "../load-worksheet";

/** The winter's work as CSV. */
export const GET = download(async () => {
  const year = await seasonYear();
  return csvFile(winterCsv(worksheetOf(loadFarm(), year, today())), `winter-${year - 1}-${year}.csv`);
});
