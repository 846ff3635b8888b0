import { expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import { howTrueCsv } from "#lib/sheets/how-true-csv";
import { day } from "../small-farm";

test("how true a season was is a row for each crop and forecast with anything to compare, days and stems by name", () => {
  const meanCameDay = toDayNumber(day("2027-06-10"));
  const timing = { plantingCount: 4, daysLate: 2.75, mostDaysOff: 5, meanCameDay };
  const stems = { pickingCount: 12, cameStems: 158, saidStems: 195, offStems: 61 };
  const said = {
    winter: { timing, stems },
    spring: { timing: null, stems: null },
    "four weeks ahead": { timing: null, stems },
  };
  expect(howTrueCsv([{ crop: { id: 1, name: "Dahlia, ball" }, plantingCount: 6, said, wintersBefore: [] }])).toBe(
    "crop,forecast_made,plantings,first_cuts,mean_first_cut,mean_first_cut_said,days_late,pickings,stems,stems_said,stems_off\r\n" +
      '"Dahlia, ball",winter,6,4,2027-06-10,2027-06-07,2.8,12,158,195,61\r\n' +
      '"Dahlia, ball",four weeks ahead,6,0,,,,12,158,195,61\r\n',
  );
});
