import { toDay } from "#lib/domain/day";
import { type CropTruth, MADE } from "#lib/plan/learning/how-true/truth";
import { csvText } from "./csv-text";

const COLUMNS = [
  "crop",
  "forecast_made",
  "plantings",
  "first_cuts",
  "mean_first_cut",
  "mean_first_cut_said",
  "days_late",
  "pickings",
  "stems",
  "stems_said",
  "stems_off",
] as const;

/** How true a season's forecasts were as CSV after RFC 4180: a header, then a row for each crop and forecast with anything to compare. Mean days are to the whole day, days late to a tenth. */
export const howTrueCsv = (crops: readonly CropTruth[]): string =>
  csvText([
    [...COLUMNS],
    ...crops.flatMap(({ crop, plantingCount, said }) =>
      MADE.map((made) => ({ made, ...said[made] }))
        .filter(({ timing, stems }) => timing !== null || stems !== null)
        .map(({ made, timing, stems }) => [
          crop.name,
          made,
          plantingCount,
          ...(timing
            ? [
                timing.plantingCount,
                toDay(Math.round(timing.meanCameDay)),
                toDay(Math.round(timing.meanCameDay - timing.daysLate)),
                Math.round(timing.daysLate * 10) / 10 + 0,
              ]
            : [0, "", "", ""]),
          ...(stems ? [stems.pickingCount, stems.cameStems, stems.saidStems, stems.offStems] : [0, "", "", ""]),
        ]),
    ),
  ]);
