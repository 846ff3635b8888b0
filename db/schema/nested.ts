import { climateColumns, climateOfColumns } from "#lib/domain/records/climate";
import type { Crop } from "#lib/domain/records/crop";
import { anchorColumns, type BloomCurve } from "#lib/domain/records/curve";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { PlantingDraft } from "#lib/domain/records/planting";
import type { RecipeLine } from "#lib/domain/records/recipe";
import type { Mark, Sourced } from "#lib/domain/sourced";
import type { planting } from "./beds";
import type { recipeLine } from "./bookings";
import type { crop } from "./crops";
import type { bloomCurve } from "./curves";
import type { farm } from "./farm";

/**
 * The records that hold groups of values, each with its way to a flat row and back; every other record is its row as it stands. What is
 * read is not trusted: the domain's schema parses it.
 */

export const farmRow = ({ frost, climate, statusWeights, winter, ...top }: Farm) => ({
  ...top,
  ...frost,
  ...climateColumns(climate),
  ...statusWeights,
  ...winter,
});

export const farmOfRow = (row: typeof farm.$inferSelect) => {
  const { station, latitudeDegrees, monthlyHighsC, monthlyLowsC } = row;
  const climate = climateOfColumns<unknown>({ station, latitudeDegrees, monthlyHighsC, monthlyLowsC });
  return { ...row, frost: row, climate, statusWeights: row, winter: row };
};

export const cropRow = ({ tradeOrigin, traitsOrigin, ...record }: Omit<Crop, "id">) => ({
  ...record,
  traitsMark: traitsOrigin.mark,
  traitsSource: traitsOrigin.source,
  tradeMark: tradeOrigin.mark,
  tradeSource: tradeOrigin.source,
  ...sourcedColumns("holdDays", record.holdDays),
  ...sourcedColumns("stretchDays", record.stretchDays),
  ...sourcedColumns("dryHoldDays", record.dryHoldDays),
  ...sourcedColumns("holdUpToC", record.holdUpToC),
  ...sourcedColumns("notColderC", record.notColderC),
  ...sourcedColumns("cutSpareShare", record.cutSpareShare),
  ...sourcedColumns("fieldDays", record.fieldDays),
  ...sourcedColumns("bunchStems", record.bunchStems),
  ...sourcedColumns("bucketStems", record.bucketStems),
  ...sourcedColumns("buyInCents", record.buyInCents),
});

export const cropOfRow = (row: typeof crop.$inferSelect) => ({
  ...row,
  traitsOrigin: { mark: row.traitsMark, source: row.traitsSource },
  tradeOrigin: { mark: row.tradeMark, source: row.tradeSource },
  holdDays: sourcedOf("holdDays", row),
  stretchDays: sourcedOf("stretchDays", row),
  dryHoldDays: sourcedOf("dryHoldDays", row),
  holdUpToC: sourcedOf("holdUpToC", row),
  notColderC: sourcedOf("notColderC", row),
  cutSpareShare: sourcedOf("cutSpareShare", row),
  fieldDays: sourcedOf("fieldDays", row),
  bunchStems: sourcedOf("bunchStems", row),
  bucketStems: sourcedOf("bucketStems", row),
  buyInCents: sourcedOf("buyInCents", row),
});

/** Where the grower has not told the share graded out, its column holds none and the one beside it says so. */
export const plantingRow = (draft: PlantingDraft) => ({
  ...draft,
  gradeOutShare: draft.gradeOutShare ?? 0,
  gradeOutTold: draft.gradeOutShare !== null,
});

export const plantingOfRow = ({ gradeOutTold, ...row }: typeof planting.$inferSelect) => ({
  ...row,
  gradeOutShare: gradeOutTold ? row.gradeOutShare : null,
});

export const curveRow = ({ anchor, timingOrigin, yieldOrigin, heatOrigin, ...curve }: Omit<BloomCurve, "id">) => ({
  ...curve,
  anchorKind: anchor.kind,
  ...anchorColumns(anchor),
  timingMark: timingOrigin.mark,
  timingSource: timingOrigin.source,
  yieldMark: yieldOrigin.mark,
  yieldSource: yieldOrigin.source,
  heatMark: heatOrigin.mark,
  heatSource: heatOrigin.source,
});

export const curveOfRow = (row: typeof bloomCurve.$inferSelect) => ({
  ...row,
  anchor: { kind: row.anchorKind, firstCut: row.firstCut, days: row.daysAfterPlanting },
  timingOrigin: { mark: row.timingMark, source: row.timingSource },
  yieldOrigin: { mark: row.yieldMark, source: row.yieldSource },
  heatOrigin: { mark: row.heatMark, source: row.heatSource },
});

export const recipeLineRow = ({ colours, ...line }: RecipeLine) => ({
  ...line,
  colours: colours === "any" ? "any" : "palette",
  orNeutral: colours === "palette-or-neutral",
});

export const recipeLineOfRow = ({ colours, orNeutral, ...row }: typeof recipeLine.$inferSelect) => ({
  ...row,
  colours: orNeutral && colours === "palette" ? "palette-or-neutral" : colours,
});

type SourcedColumns<Name extends string> = Record<Name, number> &
  Record<`${Name}Mark`, Mark> &
  Record<`${Name}Source`, string | null>;

const sourcedColumns = <Name extends string>(name: Name, { count, mark, source }: Sourced) =>
  ({ [name]: count, [`${name}Mark`]: mark, [`${name}Source`]: source }) as SourcedColumns<Name>;

const sourcedOf = <Name extends string>(
  name: Name,
  row: Record<Name, number> & Record<`${Name}Mark`, string> & Record<`${Name}Source`, string | null>,
) => ({ count: row[name], mark: row[`${name}Mark`], source: row[`${name}Source`] });
