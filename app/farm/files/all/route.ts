import { farmSheets } from "#lib/sheets/farm-sheets";
import { zipSheets } from "#lib/sheets/zip-sheets";
import { download } from "../../../download";
import { loadFarm } from "../../../load";

/** Every sheet of the farm in one zip. */
export const GET = download(() => {
  return new Response(zipSheets(farmSheets(loadFarm())), {
    headers: { "content-type": "application/zip", "content-disposition": 'attachment; filename="farm-sheets.zip"' },
  });
});
