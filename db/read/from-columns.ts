import type { bed, coolerStock, planting } from "#db/schema/beds";
import type {
  booking,
  bookingPiece,
  bookingStemLine,
  bookingUnacceptableCrop,
  recipe,
  recipeLine,
} from "#db/schema/bookings";
import type { bloomCurve, crop } from "#db/schema/crops";
import type { farm } from "#db/schema/farm";
import type { whatIf } from "#db/schema/what-ifs";

/**
 * Table rows in the shape that the domain's schemas parse. Nothing is trusted here: what cannot be decoded is passed on as it stands, so that
 * the schema names it. Columns that a schema does not know (ids of parents, positions) are dropped when it parses.
 */

/** The list in a JSON text; any other text as it is. */
function list(text: string): unknown {
  if (text === "[]") return [];
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

/** 1 and 0 as yes and no; any other number as it is. */
const yesNo = (flag: number): unknown => (flag === 1 ? true : flag === 0 ? false : flag);

export const farmShape = (row: typeof farm.$inferSelect) => ({
  ...row,
  isInvented: yesNo(row.isInvented),
  pickingWeekdays: list(row.pickingWeekdays),
  frost: row,
  statusWeights: row,
  winter: row,
});

export const cropShape = (row: typeof crop.$inferSelect) => ({
  ...row,
  roles: list(row.roles),
  tender: yesNo(row.tender),
  overwinters: yesNo(row.overwinters),
  holdDays: { count: row.holdDays, mark: row.holdDaysMark, source: row.holdDaysSource },
  fieldDays: { count: row.fieldDays, mark: row.fieldDaysMark, source: row.fieldDaysSource },
  bunchStems: { count: row.bunchStems, mark: row.bunchStemsMark, source: row.bunchStemsSource },
  bucketStems: { count: row.bucketStems, mark: row.bucketStemsMark, source: row.bucketStemsSource },
  buyInCents: { count: row.buyInCents, mark: row.buyInCentsMark, source: row.buyInCentsSource },
  cautions: list(row.cautions),
});

export const curveShape = (row: typeof bloomCurve.$inferSelect) => ({
  ...row,
  anchor: { kind: row.anchorKind, firstCut: row.firstCut, days: row.daysAfterPlanting },
  stemsPerPlantByWeek: list(row.stemsPerPlantByWeek),
  timingOrigin: { mark: row.timingMark, source: row.timingSource },
  yieldOrigin: { mark: row.yieldMark, source: row.yieldSource },
});

export const bedShape = (row: typeof bed.$inferSelect) => ({ ...row, flags: list(row.flags) });

export const plantingShape = (row: typeof planting.$inferSelect) => ({ ...row, flags: list(row.flags) });

export const coolerStockShape = (row: typeof coolerStock.$inferSelect) => row;

export const recipeShape = (row: typeof recipe.$inferSelect, lines: readonly (typeof recipeLine.$inferSelect)[]) => ({
  ...row,
  lines,
});

export const whatIfShape = (row: typeof whatIf.$inferSelect) => ({ ...row, changes: list(row.changes) });

/** The children of a booking, each list in its order. */
export type BookingLines = {
  readonly pieces: readonly (typeof bookingPiece.$inferSelect)[];
  readonly stemLines: readonly (typeof bookingStemLine.$inferSelect)[];
  readonly unacceptableCrops: readonly (typeof bookingUnacceptableCrop.$inferSelect)[];
};

export const bookingShape = (row: typeof booking.$inferSelect, lines: BookingLines) => ({
  ...row,
  palette: list(row.palette),
  unacceptableCropIds: lines.unacceptableCrops.map(({ cropId }) => cropId),
  pieces: lines.pieces.map((line) => ({ ...line, colours: list(line.colours) })),
  stemLines: lines.stemLines.map((line) => ({ ...line, cropOnly: yesNo(line.cropOnly), colours: list(line.colours) })),
});
