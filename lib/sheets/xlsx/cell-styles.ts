import { walkXml } from "./walk-xml";

/** What a number in a cell is shown as: 46550 as a day, 0.12 as 12 %, or as it stands. */
export type Shown = "day" | "percent" | "plain";

/**
 * What a cell of a style shows its number as. Source: ECMA-376 Part 1, 18.8.30 (numFmt): of the formats that every program has, 14 to 22 and 45 to
 * 47, and for other calendars 27 to 36 and 50 to 58, are days, 9 and 10 percentages; others by the letters of their code.
 */
export function cellStyles(xml: string | undefined): (style: number) => Shown {
  const codes = new Map<number, string>();
  const formatOfStyle: number[] = [];
  let isInCells = false;
  if (xml !== undefined)
    walkXml(xml, {
      open: (name, attributes) => {
        if (name === "numFmt")
          codes.set(Number(attributes.numFmtId), (attributes.formatCode ?? "").slice(0, MOST_CODE_LETTERS));
        if (name === "cellXfs") isInCells = true;
        if (name === "xf" && isInCells) formatOfStyle.push(Number(attributes.numFmtId ?? 0));
      },
      close: (name) => {
        if (name === "cellXfs") isInCells = false;
      },
    });
  const shown = formatOfStyle.map((format) => {
    const code = codes.get(format);
    return code === undefined ? shownBuiltIn(format) : shownByCode(code);
  });
  return (style) => shown[style] ?? "plain";
}

/** Longer codes no program writes, and looking through one takes the square of its length. From memory. */
const MOST_CODE_LETTERS = 255;

const DAYS = [
  [14, 22],
  [27, 36],
  [45, 47],
  [50, 58],
] as const;

function shownBuiltIn(format: number): Shown {
  if (format === 9 || format === 10) return "percent";
  return DAYS.some(([first, last]) => format >= first && format <= last) ? "day" : "plain";
}

/** By the letters of a code outside of texts in quotes, of single letters held by a backslash and of [colours]. */
function shownByCode(code: string): Shown {
  const letters = code.replace(/"[^"]*"|\\.|_.|\*.|\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, "").replace(/general/gi, "");
  if (letters.includes("%")) return "percent";
  return /[dmyhs]/i.test(letters) ? "day" : "plain";
}
