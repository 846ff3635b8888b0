import { toDayNumber } from "#lib/domain/day";
import { offersCsv } from "#lib/sheets/offers-csv";
import { today } from "../../../clock";
import { csvFile } from "../../../csv-file";
import { download } from "../../../download";
import { loadOffers } from "../load-offers";

/** What can be offered today, as a CSV file. */
export const GET = download(() => csvFile(offersCsv(loadOffers(), toDayNumber(today())), `offers-${today()}.csv`));
