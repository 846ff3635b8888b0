import { farmSheets } from "#lib/sheets/farm-sheets";
import { download } from "../../../../download";
import { loadFarm } from "../../../../load";

/** One sheet of the farm as a file, by its name: "beds.csv". The byte order mark tells spreadsheets that it is UTF-8. */
export const GET = download(async (_: Request, { params }: { params: Promise<{ name: string }> }) => {
  const { name } = await params;
  const sheet = farmSheets(loadFarm()).find((file) => file.name === name);
  if (!sheet) return new Response("There is no such sheet.", { status: 404 });
  return new Response(`\uFEFF${sheet.text}`, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename="${sheet.name}"`,
    },
  });
});
