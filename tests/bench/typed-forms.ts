import { typedBooking, typedFocal } from "../app/typed-booking";

/** What a person types, one figure of it another at each run, so that nothing is answered from what was kept. */

export const typedEnquiry = (run: number) => ({
  form: { stemCount: String(100 + run), colours: "blush", role: "focal", eventOn: "2027-06-19" },
});

export const typedCoverage = (run: number) => ({
  bookingId: null,
  form: typedBooking({
    ...{ status: "confirmed", eventOn: "2027-09-18", palette: "blush, cream", spareShare: "10" },
    stemLines: typedFocal(String(20 + run)),
  }),
});
