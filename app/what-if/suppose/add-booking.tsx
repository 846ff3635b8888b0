import type { Snapshot } from "#lib/domain/snapshot";
import type { WhatIf } from "#lib/domain/what-if";
import { STATUSES } from "#lib/domain/words";
import { DayField, NumberField, SelectField, TextField } from "../../ui/form-fields.client";
import { AddForm } from "./add-form";
import { PIECE_LINES } from "./booking-draft-values";
import { bookingOptions, recipeOptions } from "./choices";

const STATUS_OPTIONS = STATUSES.map((status) => ({ value: status, label: status }));

/** A booking gained, moved, lost, or counted otherwise. */
export function AddBooking({ whatIf, farm }: { whatIf: WhatIf; farm: Snapshot }) {
  const bookings = bookingOptions(farm, whatIf.seasonYear);
  return (
    <>
      <NewBooking whatIf={whatIf} farm={farm} />
      {bookings.length === 0 ? (
        <p className="soft">No booking of {whatIf.seasonYear} is there to move, drop or count otherwise.</p>
      ) : (
        <div className="cards">
          <AddForm whatIf={whatIf} kind="booking-moved" title="A booking moves" submit="Add the move">
            <SelectField name="bookingId" label="Booking" options={bookings} />
            <DayField name="eventOn" label="To the day" />
          </AddForm>
          <AddForm whatIf={whatIf} kind="booking-dropped" title="A booking falls through" submit="Add the loss">
            <SelectField name="bookingId" label="Booking" options={bookings} />
          </AddForm>
          <AddForm whatIf={whatIf} kind="status-set" title="A booking counts otherwise" submit="Add the status">
            <SelectField name="bookingId" label="Booking" options={bookings} />
            <SelectField name="status" label="Counted as" value="confirmed" options={STATUS_OPTIONS} />
          </AddForm>
        </div>
      )}
    </>
  );
}

function NewBooking({ whatIf, farm }: { whatIf: WhatIf; farm: Snapshot }) {
  const recipes = recipeOptions(farm);
  return (
    <AddForm whatIf={whatIf} kind="booking-added" title="One booking more" submit="Add the booking">
      <TextField name="booking.client" label="Client" />
      <DayField name="booking.eventOn" label="Day of the event" />
      <SelectField
        name="booking.status"
        label="Status"
        value="confirmed"
        options={STATUS_OPTIONS.filter(({ value }) => value !== "cancelled")}
      />
      <TextField
        name="booking.palette"
        label="Palette, best colour first"
        hint="For example: blush, cream. Left empty, any colour will do."
      />
      <NumberField name="focalStems" label="Focal stems" hint="Your farm’s spare is added to them." />
      {Array.from({ length: PIECE_LINES }, (_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the index is the line
        <div className="field wide piece-pair" key={index}>
          <SelectField name={`pieceRecipe[${index}]`} label={`Piece ${index + 1}`} value="" options={recipes} />
          <NumberField name={`pieceCount[${index}]`} label={`How many of piece ${index + 1}`} />
        </div>
      ))}
    </AddForm>
  );
}
