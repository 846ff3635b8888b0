import type { Bed, CoolerStock, Planting } from "#lib/domain/bed";
import type { BloomCurve } from "#lib/domain/bloom-curve";
import type { BookingDraft, Piece, Recipe, RecipeLine, StemLine } from "#lib/domain/booking";
import type { Crop, Variety } from "#lib/domain/crop";
import type { Farm } from "#lib/domain/farm";
import type { WhatIf } from "#lib/domain/what-if";

/** Domain rows as the columns of their tables, without id. Lists become JSON text, yes and no 1 and 0. `from-columns.ts` is the way back. */

type Draft<Row> = Omit<Row, "id">;

const listText = (list: readonly unknown[]): string => JSON.stringify(list);
const yesNo = (is: boolean): number => (is ? 1 : 0);

export const farmColumns = ({ frost, statusWeights, winter, ...top }: Farm) => ({
  ...top,
  ...frost,
  ...statusWeights,
  ...winter,
  isInvented: yesNo(top.isInvented),
  pickingWeekdays: listText(top.pickingWeekdays),
});

export const cropColumns = (crop: Draft<Crop>) => ({
  name: crop.name,
  scientific: crop.scientific,
  shape: crop.shape,
  roles: listText(crop.roles),
  usualRole: crop.usualRole,
  tender: yesNo(crop.tender),
  overwinters: yesNo(crop.overwinters),
  holdDays: crop.holdDays.count,
  holdDaysMark: crop.holdDays.mark,
  holdDaysSource: crop.holdDays.source,
  fieldDays: crop.fieldDays.count,
  fieldDaysMark: crop.fieldDays.mark,
  fieldDaysSource: crop.fieldDays.source,
  bunchStems: crop.bunchStems.count,
  bunchStemsMark: crop.bunchStems.mark,
  bunchStemsSource: crop.bunchStems.source,
  bucketStems: crop.bucketStems.count,
  bucketStemsMark: crop.bucketStems.mark,
  bucketStemsSource: crop.bucketStems.source,
  buyInCents: crop.buyInCents.count,
  buyInCentsMark: crop.buyInCents.mark,
  buyInCentsSource: crop.buyInCents.source,
  cutStage: crop.cutStage,
  cautions: listText(crop.cautions),
});

export const varietyColumns = ({ cropId, name, colour }: Draft<Variety>) => ({ cropId, name, colour });

export const curveColumns = (curve: Draft<BloomCurve>) => ({
  cropId: curve.cropId,
  varietyId: curve.varietyId,
  treatment: curve.treatment,
  anchorKind: curve.anchor.kind,
  firstCut: curve.anchor.kind === "day-of-year" ? curve.anchor.firstCut : null,
  daysAfterPlanting: curve.anchor.kind === "days-after-planting" ? curve.anchor.days : null,
  stemsPerPlantByWeek: listText(curve.stemsPerPlantByWeek),
  firstCutSpreadDays: curve.firstCutSpreadDays,
  yieldSpread: curve.yieldSpread,
  timingMark: curve.timingOrigin.mark,
  timingSource: curve.timingOrigin.source,
  yieldMark: curve.yieldOrigin.mark,
  yieldSource: curve.yieldOrigin.source,
  note: curve.note,
});

export const recipeColumns = ({ name, unit, origin }: Draft<Recipe>) => ({ name, unit, origin });

export const recipeLineColumns = ({ role, stemsPerPiece, colours }: RecipeLine) => ({ role, stemsPerPiece, colours });

export const bedColumns = (bed: Draft<Bed>) => ({
  name: bed.name,
  lengthMetres: bed.lengthMetres,
  widthMetres: bed.widthMetres,
  flags: listText(bed.flags),
  noEntryFrom: bed.noEntryFrom,
  noEntryUntil: bed.noEntryUntil,
  note: bed.note,
});

export const plantingColumns = (planting: Draft<Planting>) => ({
  bedId: planting.bedId,
  varietyId: planting.varietyId,
  seasonYear: planting.seasonYear,
  treatment: planting.treatment,
  plantedOn: planting.plantedOn,
  plantCount: planting.plantCount,
  aliveShare: planting.aliveShare,
  gradeOutShare: planting.gradeOutShare,
  winterSurvivalShare: planting.winterSurvivalShare,
  flags: listText(planting.flags),
});

export const bookingColumns = (booking: BookingDraft) => ({
  client: booking.client,
  status: booking.status,
  eventOn: booking.eventOn,
  palette: listText(booking.palette),
  spareShare: booking.spareShare,
  note: booking.note,
});

export const pieceColumns = ({ recipeId, pieceCount, colours }: Piece) => ({
  recipeId,
  pieceCount,
  colours: listText(colours),
});

export const stemLineColumns = (line: StemLine) => ({
  role: line.role,
  cropId: line.cropId,
  cropOnly: yesNo(line.cropOnly),
  colours: listText(line.colours),
  stemCount: line.stemCount,
});

export const coolerStockColumns = ({ varietyId, cutOn, stemCount }: Draft<CoolerStock>) => ({
  varietyId,
  cutOn,
  stemCount,
});

export const whatIfColumns = ({ name, seasonYear, changes }: Draft<WhatIf>) => ({
  name,
  seasonYear,
  changes: listText(changes),
});
