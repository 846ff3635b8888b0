import { CELLS_A_ROW, DOTS_A_ROW, stemsPerMark, type WeekCells } from "./cells";

/** Where everything of a ribbon lies, in the units of its view box. */
export type RibbonGeometry = {
  readonly width: number;
  readonly height: number;
  readonly weekCount: number;
  readonly unit: number;
  /** Width of a week, and of one mark in it. */
  readonly weekWidth: number;
  readonly pitch: number;
  /** Marks side by side in a week. */
  readonly cellsARow: number;
  readonly left: number;
  readonly top: number;
  /** The soil line: marks grow up from it. */
  readonly soil: number;
  readonly stemsAtTop: number;
};

const WIDTH = 1184;
const LEFT = 34;
const RIGHT = 8;
const TOP = 40;
const BELOW = 47;
/** A week is never wider than this, so that a short season does not become a wall of giant blooms. */
const WIDEST_WEEK = 60;

/** The picture for so many weeks, the highest with `mostNeedStems`. */
export function ribbonGeometry(weekCount: number, mostNeedStems: number): RibbonGeometry {
  const weekWidth = Math.min(WIDEST_WEEK, (WIDTH - LEFT - RIGHT) / Math.max(1, weekCount));
  const pitch = weekWidth / CELLS_A_ROW;
  const unit = stemsPerMark(mostNeedStems);
  const rows = Math.max(6, Math.ceil(Math.round(mostNeedStems / unit) / CELLS_A_ROW));
  const soil = TOP + rows * pitch;
  return {
    width: WIDTH,
    height: soil + BELOW,
    weekCount,
    unit,
    weekWidth,
    pitch,
    cellsARow: CELLS_A_ROW,
    left: LEFT,
    top: TOP,
    soil,
    stemsAtTop: rows * CELLS_A_ROW * unit,
  };
}

export const weekLeft = ({ left, weekWidth }: RibbonGeometry, week: number): number => left + week * weekWidth;

/** How high a week's marks stand over the soil, by whole rows. */
export const stringTop = ({ soil, pitch, cellsARow }: RibbonGeometry, cellCount: number): number =>
  soil - Math.ceil(cellCount / cellsARow) * pitch;

/**
 * The marks from `first` to `first + count` of a week as rectangles: filled with a pattern of one mark, they are the marks. Whole rows make one
 * rectangle, so a run is three at the most.
 */
export function cellPath(geometry: RibbonGeometry, week: number, first: number, count: number): string {
  const { soil, pitch, cellsARow } = geometry;
  const end = first + count;
  let path = "";
  for (let cell = first; cell < end; ) {
    const row = Math.floor(cell / cellsARow);
    const column = cell % cellsARow;
    const rows = column === 0 ? Math.max(1, Math.floor((end - cell) / cellsARow)) : 1;
    const run = Math.min(cellsARow - column, end - cell);
    const [x, y] = [weekLeft(geometry, week) + column * pitch, soil - (row + rows) * pitch];
    path += `M${tenth(x)} ${tenth(y)}h${tenth(run * pitch)}v${tenth(rows * pitch)}h${tenth(-run * pitch)}z`;
    cell += rows * run;
  }
  return path;
}

/** The stepped path of the string: at the top of each week's marks, down to the soil where nothing is booked. */
export function stringPath(geometry: RibbonGeometry, weeks: readonly WeekCells[]): string {
  let path = "";
  let isUp = false;
  weeks.forEach(({ cellCount }, week) => {
    const x = tenth(weekLeft(geometry, week));
    const y = tenth(stringTop(geometry, cellCount));
    if (cellCount > 0) path += isUp ? `V${y}` : `M${x} ${tenth(geometry.soil)}V${y}`;
    else if (isUp) path += `V${tenth(geometry.soil)}`;
    isUp = cellCount > 0;
    if (isUp) path += `H${tenth(weekLeft(geometry, week + 1))}`;
  });
  return isUp ? `${path}V${tenth(geometry.soil)}` : path;
}

/** The hole of a week: from the first row that has a ring up to the string. */
export function holePath(geometry: RibbonGeometry, week: number, { cellCount, ringCount }: WeekCells): string {
  if (ringCount === 0) return "";
  const bottom = geometry.soil - Math.floor((cellCount - ringCount) / geometry.cellsARow) * geometry.pitch;
  const top = stringTop(geometry, cellCount);
  return `M${tenth(weekLeft(geometry, week))} ${tenth(top)}h${tenth(geometry.weekWidth)}V${tenth(bottom)}h${tenth(-geometry.weekWidth)}z`;
}

const DOT_PITCH = 4.7;

/** From dot to dot under the soil line. */
export const dotStep = ({ weekWidth }: RibbonGeometry): number => tenth(weekWidth / (DOTS_A_ROW + 0.2));

/** Dots of unclaimed stems under the soil line: lines whose dashes, `dotStep` apart and of no length, are round. */
export function dotPath(geometry: RibbonGeometry, week: number, first: number, count: number): string {
  const step = dotStep(geometry);
  let path = "";
  for (let dot = first; dot < first + count; ) {
    const column = dot % DOTS_A_ROW;
    const run = Math.min(DOTS_A_ROW - column, first + count - dot);
    const y = geometry.soil + 7 + DOT_PITCH * Math.floor(dot / DOTS_A_ROW);
    path += `M${tenth(weekLeft(geometry, week) + step * (column + 0.6))} ${tenth(y)}${dotLine(run, step)}`;
    dot += run;
  }
  return path;
}

/** A line to the right over so many dots: a hair longer than to the last one, so that it is there. */
const dotLine = (count: number, step: number): string => `h${tenth((count - 1) * step + 0.1)}`;

const tenth = (length: number): number => Math.round(length * 10) / 10;
