import { pickCsv } from "#lib/sheets/pick-csv";
import { csvFile } from "../../csv-file";
import { download } from "../../download";
import { seasonYear } from "../../frame/season-year";
import { loadPlan } from "../../load";
import { choiceOf, queryOf } from "../choice";
import { loadLines } from "../load-lines";

/** The pick list of a day, a week, a booking or, when none is named, the whole season, as a CSV file. */
export const GET = download(async (request: Request) => {
  const choice = choiceOf(Object.fromEntries(new URL(request.url).searchParams));
  const lines = choice ? loadLines(choice) : loadPlan(await seasonYear()).pickList;
  if (lines === null) return new Response("No such booking.", { status: 404 });
  const name = choice ? queryOf(choice).replace("=", "-") : `season-${await seasonYear()}`;
  return csvFile(pickCsv(lines), `pick-list-${name}.csv`);
});
