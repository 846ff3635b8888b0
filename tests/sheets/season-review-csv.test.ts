import { expect, test } from "vitest";
import { seasonReviewCsv } from "#lib/sheets/season-review-csv";
import { crop } from "../small-farm";

test("the review of a season is a crop a row, stems and cents by name", () => {
  const row = { cutStems: 75, usedStems: 34, thrownAwayStems: 6, orderStems: 10, leftStems: 25, orderCents: 1200 };
  expect(seasonReviewCsv([{ crop: crop({ id: 1, name: "Dahlia, ball" }), ...row }])).toBe(
    "crop,cut_stems,used_stems,thrown_away_stems,order_stems,left_stems,order_cents\r\n" +
      '"Dahlia, ball",75,34,6,10,25,1200\r\n',
  );
});
