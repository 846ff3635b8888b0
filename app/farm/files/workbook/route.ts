import { farmWorkbook } from "#lib/sheets/farm-workbook";
import { download } from "../../../download";
import { loadFarm } from "../../../load";

/** Every sheet of the farm in one workbook. */
export const GET = download(
  () =>
    new Response(farmWorkbook(loadFarm()), {
      headers: {
        "content-type": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
        "content-disposition": 'attachment; filename="farm.xlsx"',
      },
    }),
);
