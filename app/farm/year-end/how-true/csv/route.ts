import type { HowTrue } from "#lib/plan/learning/how-true/truth";
import { howTrueCsv } from "#lib/sheets/how-true-csv";
import { csvFile } from "../../../../csv-file";
import { download } from "../../../../download";
import { readerOf } from "../../../../threads/reader";
import { askHowTrue } from "../ask-how-true";
import { lookedBackOn } from "../looked-back-on";

/** How true a season's forecasts were, as a CSV file. */
export const GET = download(async (request: Request) => {
  const year = lookedBackOn(Object.fromEntries(new URL(request.url).searchParams));
  try {
    const found = (await askHowTrue(year, readerOf(request)).answer) as HowTrue | null;
    return csvFile(howTrueCsv(found?.crops ?? []), `how-true-${year}.csv`);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return new Response(why, { status: 503, headers: { "content-type": "text/plain; charset=utf-8" } });
  }
});
