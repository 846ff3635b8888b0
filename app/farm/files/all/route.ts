import { farmSheets } from "#lib/sheets/farm-sheets";
import { zipSheets } from "#lib/sheets/zip-sheets";
import { loadFarm } from "../../../load";

/** Every sheet of the farm in one zip. */
export function GET(): Response {
  return new Response(zipSheets(farmSheets(loadFarm())), {
    headers: { "content-type": "application/zip", "content-disposition": 'attachment; filename="farm-sheets.zip"' },
  });
}
