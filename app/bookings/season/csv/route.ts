import { seasonReview } from "#lib/plan/learning/review/season-review";
import { seasonReviewCsv } from "#lib/sheets/season-review-csv";
import { download } from "../../../download";
import { seasonYear } from "../../../frame/season-year";
import { loadPlan } from "../../../load";

/** What became of a season's stems, as a CSV file. */
export const GET = download(async () => {
  const year = await seasonYear();
  return new Response(`\uFEFF${seasonReviewCsv(seasonReview(loadPlan(year)).crops)}`, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename="season-review-${year}.csv"`,
    },
  });
});
