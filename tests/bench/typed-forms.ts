/** What a person types, one figure of it another at each run, so that nothing is answered from what was kept. */

export const typedEnquiry = (run: number) => ({
  form: { stemCount: String(100 + run), colours: "blush", role: "focal", eventOn: "2027-06-19" },
});

export const typedBooking = (run: number) => ({
  bookingId: null,
  form: {
    client: "Somebody",
    status: "confirmed",
    eventOn: "2027-09-18",
    palette: "blush, cream",
    alternativeColours: "",
    unacceptableColours: "",
    takenOn: "",
    spareShare: "10",
    unacceptableCropIds: [],
    pieces: [],
    stemLines: [{ role: "focal", cropId: null, cropOnly: false, asks: "", colours: "", stemCount: String(20 + run) }],
    note: "",
  },
});
