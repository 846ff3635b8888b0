import { addDays, type Day } from "#lib/domain/day";
import type { EventHabit, OwnEventDays } from "#lib/domain/event-days";
import { measureIn, PERCENT, shown } from "#lib/domain/measures";
import { type DecimalMark, writeNumber } from "#lib/domain/read-number";
import type { Booking, BookingDraft } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Colour, ROLES, type Role, type Status } from "#lib/domain/words";
import type { OwnColour } from "#lib/domain/writing";

/**
 * A booking as it stands in the form: all text, so that nothing typed is ever lost, however wrong. The server parses it; the
 * paths of its problems are the paths of these fields.
 */
export type BookingForm = {
  client: string;
  status: Status;
  lapsesAfter: string;
  eventOn: string;
  palette: string;
  alternativeColours: string;
  unacceptableColours: string;
  spareShare: string;
  /** In dollars. */
  priceCents: string;
  unacceptableCropIds: number[];
  pieces: { recipeId: number; pieceCount: string; colours: string }[];
  stemLines: {
    role: Role;
    cropId: number | null;
    cropOnly: boolean;
    asks: string;
    colours: string;
    stemCount: string;
  }[];
  /** Days before the event, each "" where it follows from the others and the farm's habit. */
  leadDays: string;
  designDays: string;
  deliverDays: string;
  takenOn: string;
  finalDueOn: string;
  note: string;
};

/** What the form must know of the farm, and no more. */
export type Choices = {
  recipes: { id: number; name: string; unit: string; stemsEach: Partial<Record<Role, number>> }[];
  crops: { id: number; name: string; roles: readonly Role[] }[];
  decimalMark: DecimalMark;
  ownColours: readonly OwnColour[];
  /** Until when an enquiry and a hold of today are kept by the farm's habit. */
  lapse: { readonly enquiry: string; readonly held: string };
  habit: EventHabit;
};

/** A line of pieces or of stems as it stands in the form. */
export type PieceLine = BookingForm["pieces"][number];
export type StemLineTyped = BookingForm["stemLines"][number];

export const choicesOf = ({ farm, recipes, crops }: Snapshot, today: Day): Choices => ({
  habit: {
    leadDays: farm.leadDays,
    wornLaterDays: farm.wornLaterDays,
    designDays: farm.designDays,
    deliverDays: farm.deliverDays,
  },
  lapse: { enquiry: addDays(today, farm.enquiryDays), held: addDays(today, farm.holdDays) },
  decimalMark: farm.decimalMark,
  ownColours: farm.ownColours,
  recipes: recipes.map(({ id, name, unit, lines }) => ({
    id,
    name,
    unit,
    stemsEach: Object.fromEntries(
      ROLES.map((role) => [
        role,
        lines.reduce((sum, line) => (line.role === role ? sum + line.stemsPerPiece : sum), 0),
      ]),
    ),
  })),
  crops: crops.map(({ id, name, roles }) => ({ id, name, roles })),
});

const listed = (colours: readonly Colour[]) => colours.join(", ");

/** Days of its own as they stand in the form. */
const ownDaysTyped = ({ leadDays, designDays, deliverDays }: OwnEventDays) => ({
  leadDays: leadDays?.toString() ?? "",
  designDays: designDays?.toString() ?? "",
  deliverDays: deliverDays?.toString() ?? "",
});

/** A booking as the form shows it, numbers by the farm's decimal mark. */
export const formOf = (booking: Booking | BookingDraft, mark: DecimalMark): BookingForm => ({
  client: booking.client,
  status: booking.status,
  lapsesAfter: booking.lapsesAfter ?? "",
  eventOn: booking.eventOn,
  palette: listed(booking.palette),
  alternativeColours: listed(booking.alternativeColours),
  unacceptableColours: listed(booking.unacceptableColours),
  spareShare: shown(PERCENT, booking.spareShare, mark),
  priceCents: booking.priceCents === null ? "" : shown(measureIn("us", "dollars"), booking.priceCents, mark),
  unacceptableCropIds: booking.unacceptableCropIds,
  pieces: booking.pieces.map((piece) => ({
    recipeId: piece.recipeId,
    pieceCount: writeNumber(piece.pieceCount, mark),
    colours: listed(piece.colours),
  })),
  stemLines: booking.stemLines.map((line) => ({
    ...line,
    asks: line.asks.join(", "),
    colours: listed(line.colours),
    stemCount: writeNumber(line.stemCount, mark),
  })),
  ...ownDaysTyped(booking),
  takenOn: booking.takenOn ?? "",
  finalDueOn: booking.finalDueOn ?? "",
  note: booking.note,
});
