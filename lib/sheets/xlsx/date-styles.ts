import { walkXml } from "./walk-xml";

/**
 * Whether a cell of this style shows a date. Source: ECMA-376 Part 1, 18.8.30 (numFmt): the formats that every program has, 14 to 22 and 45 to
 * 47, and for other calendars 27 to 36 and 50 to 58; others by the letters of their code.
 */
export function dateStyles(xml: string | undefined): (style: number) => boolean {
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
  const dates = formatOfStyle.map((format) => {
    const code = codes.get(format);
    return code === undefined ? isBuiltInDate(format) : saysDate(code);
  });
  return (style) => dates[style] ?? false;
}

/** Longer codes no program writes, and looking through one takes the square of its length. From memory. */
const MOST_CODE_LETTERS = 255;

const isBuiltInDate = (format: number): boolean =>
  [14, 22, 27, 36, 45, 47, 50, 58].some(
    (from, index, ends) => index % 2 === 0 && format >= from && format <= ends[index + 1],
  );

/** A code with a letter of a date outside of texts in quotes, of single letters held by a backslash and of [colours]. */
const saysDate = (code: string): boolean =>
  /[dmyhs]/i.test(code.replace(/"[^"]*"|\\.|_.|\*.|\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, "").replace(/general/gi, ""));
