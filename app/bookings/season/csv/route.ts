import { seasonReview } from "#lib/plan/learning/review/season-review";
import { seasonReviewCsv } from "#lib/sheets/season-review-csv";
import { csvFile } from "../../../csv-file";
import { download } from "../../../download";
import { loadPlan } from "../../../load";
import { seasonAsked } from "../../review/season-asked";

/** What became of a season's stems, as a CSV file. */
export const GET = download((request: Request) => {
  const year = seasonAsked(Object.fromEntries(new URL(request.url).searchParams));
  return csvFile(seasonReviewCsv(seasonReview(loadPlan(year)).crops), `season-review-${year}.csv`);
});
