import { toDayNumber } from "#lib/domain/day";
import { offersCsv } from "#lib/sheets/offers-csv";
import { today } from "../../../clock";
import { download } from "../../../download";
import { loadOffers } from "../load-offers";

/** What can be offered today, as a CSV file. The byte order mark tells spreadsheets that it is UTF-8. */
export const GET = download(
  () =>
    new Response(`\uFEFF${offersCsv(loadOffers(), toDayNumber(today()))}`, {
      headers: {
        "content-type": "text/csv; charset=utf-8",
        "content-disposition": `attachment; filename="offers-${today()}.csv"`,
      },
    }),
);
