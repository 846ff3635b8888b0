"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { addBooking, removeBooking, setBookingStatus, updateBooking } from "#db/write/bookings";
import type { Problem } from "#lib/domain/problem";
import { STATUSES } from "#lib/domain/words";
import { farmDatabase } from "../load";
import { parseBookingForm } from "./editor/parse-form";
import { unknownChoices } from "./editor/unknown-choices";

/** Writes a booking, new or changed, and opens it; or returns every problem and writes nothing. */
export async function saveBooking(bookingId: number | null, form: unknown): Promise<readonly Problem[]> {
  const parsed = parseBookingForm(form);
  if (!parsed.ok) return parsed.problems;
  const unknown = unknownChoices(parsed.parsed);
  if (unknown.length) return unknown;
  const database = farmDatabase();
  const written =
    bookingId === null ? addBooking(database, parsed.parsed) : updateBooking(database, bookingId, parsed.parsed);
  if (!written.ok) return written.problems;
  revalidatePath("/", "layout");
  redirect(`/bookings/${bookingId ?? written.result}`);
}

const statusForm = z.object({ bookingId: z.coerce.number().int(), status: z.enum(STATUSES) });

/** Sets where a booking stands: to cancel it is to set it to cancelled, and can be undone. */
export async function changeStatus(form: FormData): Promise<void> {
  const parsed = statusForm.safeParse(Object.fromEntries(form));
  if (!parsed.success) redirect("/bookings");
  setBookingStatus(farmDatabase(), parsed.data.bookingId, parsed.data.status);
  revalidatePath("/", "layout");
}

/** Takes a booking out of the farm's records altogether; the undo on the next page brings it back. */
export async function deleteBooking(form: FormData): Promise<void> {
  const bookingId = z.coerce.number().int().safeParse(form.get("bookingId"));
  if (bookingId.success) removeBooking(farmDatabase(), bookingId.data);
  revalidatePath("/", "layout");
  redirect("/bookings");
}
