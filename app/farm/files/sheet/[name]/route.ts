import { farmSheets } from "#lib/sheets/farm-sheets";
import { csvFile } from "../../../../csv-file";
import { download } from "../../../../download";
import { loadFarm } from "../../../../load";

/** One sheet of the farm as a file, by its name: "beds.csv". */
export const GET = download(async (_: Request, { params }: { params: Promise<{ name: string }> }) => {
  const { name } = await params;
  const sheet = farmSheets(loadFarm()).find((file) => file.name === name);
  return sheet ? csvFile(sheet.text, sheet.name) : new Response("There is no such sheet.", { status: 404 });
});
