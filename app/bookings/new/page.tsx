import type { Metadata } from "next";
import { z } from "zod";
import { PERCENT, shown } from "#lib/domain/measures";
import { today } from "../../clock";
import { loadFarm } from "../../load";
import { BookingEditor } from "../editor/booking-editor.client";
import { type BookingForm, choicesOf, formOf } from "../editor/draft";

export const metadata: Metadata = { title: "New booking" };

const query = z.object({
  copy: z.coerce.number().int().optional().catch(undefined),
  on: z.string().optional().catch(undefined),
});

/** An empty booking, or a copy of an earlier one without its client and day. */
export default async function NewBookingPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { copy, on } = query.parse(await searchParams);
  const farm = loadFarm();
  const copied = farm.bookings.find((booking) => booking.id === copy);
  const choices = choicesOf(farm, today());
  const empty: BookingForm = {
    client: "",
    status: "enquiry",
    lapsesAfter: choices.lapse.enquiry,
    eventOn: on ?? "",
    palette: "",
    alternativeColours: "",
    unacceptableColours: "",
    spareShare: shown(PERCENT, farm.farm.spareShare, farm.farm.decimalMark),
    priceCents: "",
    unacceptableCropIds: [],
    pieces: [],
    stemLines: [],
    ...{ leadDays: "", designDays: "", deliverDays: "" },
    takenOn: "",
    finalDueOn: "",
    note: "",
  };
  const form = copied
    ? {
        ...formOf(copied, farm.farm.decimalMark),
        client: "",
        eventOn: on ?? "",
        takenOn: "",
        finalDueOn: "",
        priceCents: "",
        status: "enquiry" as const,
        lapsesAfter: empty.lapsesAfter,
      }
    : empty;
  return (
    <>
      <p className="crumb">
        <a href="/bookings">Bookings</a>
      </p>
      <h1>{copied ? `New booking, copied from ${copied.client}` : "New booking"}</h1>
      <BookingEditor bookingId={null} form={form} choices={choices} />
    </>
  );
}
