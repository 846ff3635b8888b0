import { originInWords } from "#lib/domain/sourced";
import type { WinterWorksheet } from "#lib/plan/winter/worksheet";
import { taskWords } from "#lib/plan/words/task-words";
import { csvText } from "./csv-text";

const COLUMNS = [
  "day",
  "bed",
  "fate",
  "variety",
  "colour",
  "work",
  "how",
  "hours",
  "clumps",
  "leaf_cubic_metres",
  "tarp_square_metres",
  "origin",
];

/** The winter's work as CSV after RFC 4180: a header, a piece of work a row, in order of day; hours and sizes to a thousandth. */
export const winterCsv = ({ tasks }: Pick<WinterWorksheet, "tasks">): string =>
  csvText([
    COLUMNS,
    ...tasks.map((task) => {
      const { what, how } = taskWords(task);
      return [
        task.day,
        task.bedName,
        task.fate,
        task.variety?.name ?? "",
        task.variety?.colour ?? "",
        what,
        how,
        thousandths(task.hours),
        task.clumpCount,
        thousandths(task.leafCubicMetres),
        thousandths(task.tarpSquareMetres),
        originInWords(task.origin),
      ];
    }),
  ]);

const thousandths = (number: number): number => Math.round(number * 1000) / 1000;
