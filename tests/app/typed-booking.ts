import type { BookingForm } from "../../app/bookings/editor/draft";
import { formOf } from "./form-of";

/** A booking's form in which nobody has typed more than this: a hold of 12 June 2027 without spare. */
export const typedBooking = (given: Partial<BookingForm> = {}): BookingForm => ({
  ...{ client: "Typed", status: "held", lapsesAfter: "", eventOn: "2027-06-12" },
  ...{ palette: "", alternativeColours: "", unacceptableColours: "", spareShare: "0", priceCents: "" },
  ...{
    unacceptableCropIds: [],
    pieces: [],
    stemLines: [],
    ...{ leadDays: "", designDays: "", deliverDays: "" },
    takenOn: "",
    finalDueOn: "",
    note: "",
  },
  ...given,
});

/** Its only line: so many focal stems in any colour. */
export const typedFocal = (stemCount: string): BookingForm["stemLines"] => [
  { role: "focal", cropId: null, cropOnly: false, asks: "", colours: "", stemCount },
];

/** What is sent as it is saved; without an id it is a new booking. */
export const sentBooking = (booking: BookingForm, id?: number): FormData =>
  formOf({ bookingId: id === undefined ? "" : String(id), booking: JSON.stringify(booking) });
