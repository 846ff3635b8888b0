import { readFileSync } from "node:fs";
import { copyNamed } from "../../../copies";

/** A copy to take along. Only a name of the list leads to a file. */
export async function GET(_: Request, { params }: { params: Promise<{ name: string }> }): Promise<Response> {
  const copy = copyNamed((await params).name);
  if (!copy) return new Response("There is no such copy.", { status: 404 });
  return new Response(new Uint8Array(readFileSync(copy.path)), {
    headers: {
      "content-type": "application/vnd.sqlite3",
      "content-disposition": `attachment; filename="${copy.name}"`,
      "cache-control": "no-store",
    },
  });
}
