import { cropAs } from "#lib/domain/crop-of-variety";
import { type Day, toDayNumber } from "#lib/domain/day";
import { groupsOf } from "#lib/domain/groups-of";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { Cut } from "#lib/domain/records/cut";
import type { Variety } from "#lib/domain/records/variety";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { placeKey } from "./cut-lots";
import { isDelivery } from "./orders";
import { type PickLine, placeOf } from "./pick-list";
import { type RowWaits, rowWaits } from "./row-waits";
import type { AskedPart } from "./split-cut";

/** What is to be cut of one variety in one bed, for all bookings together. Stems to cut are before grading. */
export type RowToCut = {
  readonly bedId: number;
  readonly place: string;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly stemsToCut: number;
  /** By day of the event, then by booking; standing orders, which take what bookings leave, last. */
  readonly parts: readonly (AskedPart & { readonly booking: Booking })[];
  /** Stems that are recorded of it already: the list asks for more. */
  readonly recordedStems: number;
  /** What lists have asked for in all, by booking, those now recorded among it [T10]. */
  readonly askedInAll: readonly (readonly [bookingId: number, stemsToCut: number])[];
  /** What becomes of it where it is left for the next picking day. */
  readonly waits: RowWaits | null;
};

/** What was recorded as cut of one variety in one bed. `stemsAsked` is null where no list asked. */
export type RowCut = {
  readonly place: string;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly cuts: readonly Cut[];
  readonly stemsCut: number;
  readonly stemsAsked: number | null;
  /** Whether what was not cut was left for the next picking day [T14]. */
  readonly restStands: boolean;
};

/** A picking day bed by bed: what is not recorded yet, in the order in which beds are walked, and what is, in the order it was recorded. */
export type DayToCut = { readonly open: readonly RowToCut[]; readonly done: readonly RowCut[] };

/**
 * A day's list as it is cut. Of a day that has passed, the open rows are those that count as cut as planned and are not recorded [T1].
 * @param lines  the pick list's lines of the day, of every season that it touches
 */
export function dayToCut(snapshot: Snapshot, lines: readonly PickLine[], day: Day): DayToCut {
  const toCut = lines.flatMap((line) => {
    const { stand } = line;
    return stand.kind === "planting" && !stand.isRecorded ? [{ line, key: placeKey(stand.planting.planting) }] : [];
  });
  const rows = [...groupsOf(toCut, ({ key }) => key).values()].map((ofRow) => ofRow.map(({ line }) => line));
  const cuts = snapshot.cuts.filter(({ cutOn }) => cutOn === day);
  return {
    open: rows.map((lines) => rowToCut(lines, cuts, rowWaits(lines, snapshot.farm, day))),
    done: rowsCut(snapshot, cuts),
  };
}

/** The days from a day on that a pick list asks for, before today, with their stems that nobody has recorded. Day numbers, the latest first. */
export function daysNotRecorded(
  lines: readonly PickLine[],
  from: Day,
  today: Day,
): { readonly day: number; readonly stemsToCut: number }[] {
  const stemsOn = new Map<number, number>();
  const [first, last] = [toDayNumber(from), toDayNumber(today)];
  for (const { stand, cutDay, stemsToCut } of lines) {
    if (stand.kind !== "planting" || stand.isRecorded || cutDay < first || cutDay >= last) continue;
    stemsOn.set(cutDay, (stemsOn.get(cutDay) ?? 0) + stemsToCut);
  }
  return [...stemsOn].map(([day, stemsToCut]) => ({ day, stemsToCut })).sort((a, b) => b.day - a.day);
}

function rowToCut(lines: readonly PickLine[], cuts: readonly Cut[], waits: RowWaits | null): RowToCut {
  const [{ stand, variety, crop }] = lines;
  const byBooking = new Map<number, { bookingId: number; stemsToCut: number; booking: Booking }>();
  for (const { booking, stemsToCut } of lines) {
    const known = byBooking.get(booking.id);
    byBooking.set(booking.id, { bookingId: booking.id, booking, stemsToCut: stemsToCut + (known?.stemsToCut ?? 0) });
  }
  const inTurn = (a: Booking, b: Booking) =>
    Number(isDelivery(a)) - Number(isDelivery(b)) ||
    (a.eventOn < b.eventOn ? -1 : a.eventOn > b.eventOn ? 1 : a.id - b.id);
  const bedId = stand.kind === "planting" ? stand.planting.bed.id : 0;
  const parts = [...byBooking.values()].sort((a, b) => inTurn(a.booking, b.booking));
  const recorded = cuts.filter((cut) => placeKey(cut) === placeKey({ bedId, varietyId: variety.id }));
  return {
    bedId,
    place: placeOf(stand),
    variety,
    crop,
    stemsToCut: lines.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0),
    parts,
    recordedStems: recorded.reduce((sum, { stemsCut }) => sum + stemsCut, 0),
    askedInAll: askedInAll(parts, recorded),
    waits,
  };
}

/** Standing orders share one record: what was asked of it before stands with the first of them. */
function askedInAll(parts: RowToCut["parts"], recorded: readonly Cut[]): RowToCut["askedInAll"] {
  const firstOrder = parts.find(({ booking }) => isDelivery(booking))?.booking.id;
  return parts.map(({ booking: { id }, stemsToCut }) => {
    const bookingId = id === firstOrder ? null : id;
    const before = recorded.find((cut) => cut.bookingId === bookingId)?.stemsAsked ?? 0;
    return [id, stemsToCut + before];
  });
}

function rowsCut({ beds, varieties, crops }: Snapshot, cuts: readonly Cut[]): RowCut[] {
  const bedOf = new ById("bed", beds);
  const varietyOf = new ById("variety", varieties);
  const cropOf = new ById("crop", crops);
  return [...groupsOf(cuts, placeKey).values()].map((ofRow) => {
    const variety = varietyOf.get(ofRow[0].varietyId);
    const asked = ofRow.flatMap(({ stemsAsked }) => stemsAsked ?? []);
    return {
      place: bedOf.get(ofRow[0].bedId).name,
      variety,
      crop: cropAs(variety, cropOf.get(variety.cropId)),
      cuts: ofRow,
      stemsCut: ofRow.reduce((sum, { stemsCut }) => sum + stemsCut, 0),
      stemsAsked: asked.length > 0 ? asked.reduce((sum, stems) => sum + stems, 0) : null,
      restStands: ofRow.some((cut) => cut.restStands),
    };
  });
}
