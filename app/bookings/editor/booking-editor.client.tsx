"use client";

import { useState } from "react";
import { BOOKING } from "#lib/domain/records/booking";
import { STATUSES, type Status } from "#lib/domain/words";
import { CountedMarks } from "../../look/counted-row";
import { Form } from "../../ui/form.client";
import { AreaField, DayField, NumberField, SelectField, TextField } from "../../ui/form-fields.client";
import { saveBooking } from "../actions";
import { ColourField } from "./colour-field.client";
import { CoveragePanel } from "./coverage-panel";
import type { BookingForm, Choices } from "./draft";
import { EventDaysFold } from "./event-days-fold.client";
import { PasteRows } from "./paste-rows.client";
import { PiecesMatrix } from "./pieces-matrix.client";
import { SaveBooking, ShortBar } from "./save-booking.client";
import { useCoverage } from "./use-coverage.client";
import { useRevisionRead } from "./use-revision-read.client";

type Props = { bookingId: number | null; form: BookingForm; choices: Choices };

const STATUS_OPTIONS = STATUSES.map((status) => ({ value: status, label: status }));

/** The booking form. Coverage is asked for with every keystroke; the form is sent as it stands here, in one field. */
export function BookingEditor({ bookingId, form: initial, choices }: Props) {
  const [form, setForm] = useState(initial);
  const revision = useRevisionRead(initial, form);
  const answer = useCoverage(form, bookingId);
  const set = (part: Partial<BookingForm>) => setForm((before) => ({ ...before, ...part }));
  return (
    <Form
      action={saveBooking}
      hidden={{ bookingId: bookingId ?? "", booking: JSON.stringify(form) }}
      label="The booking"
      revision={revision}
      onRefill={(typed) => setForm({ ...initial, ...JSON.parse(typed.booking[0]) })}
    >
      <CountedMarks />
      <div className="cols booking-cols">
        <div>
          <div className="booking-facts">
            <TextField name="client" label="Client" value={form.client} onChange={(client) => set({ client })} />
            <DayField
              name="eventOn"
              label="Day of the event"
              value={form.eventOn}
              onChange={(eventOn) => set({ eventOn })}
            />
            <SelectField
              name="status"
              label="Status"
              options={STATUS_OPTIONS}
              value={form.status}
              onChange={(status) => set(restanding(form, status as Status, choices.lapse))}
            />
            {(form.status === "enquiry" || form.status === "held") && (
              <DayField
                name="lapsesAfter"
                label={BOOKING.lapsesAfter.label}
                hint={BOOKING.lapsesAfter.hint}
                value={form.lapsesAfter}
                onChange={(lapsesAfter) => set({ lapsesAfter })}
              />
            )}
            <NumberField
              name="spareShare"
              label="Spare"
              unit="%"
              value={form.spareShare}
              onChange={(spareShare) => set({ spareShare })}
            />
            <NumberField
              name="priceCents"
              label="Price"
              unit="$"
              value={form.priceCents}
              onChange={(priceCents) => set({ priceCents })}
            />
            <ColourField
              name="palette"
              isWide
              ownColours={choices.ownColours}
              label="Palette, best colour first"
              hint="For example: blush, cream, white. Leave it empty if any colour will do."
              value={form.palette}
              onChange={(palette) => set({ palette })}
            />
          </div>
          <PiecesMatrix lines={form} choices={choices} spare={form.spareShare} answer={answer} onChange={set} />
          <PasteRows
            ownColours={choices.ownColours}
            onRows={({ pieces, stemLines }) =>
              set({ pieces: [...form.pieces, ...pieces], stemLines: [...form.stemLines, ...stemLines] })
            }
          />
          <EventDaysFold form={form} habit={choices.habit} onChange={set} />
          <details>
            <summary>Alternatives, what is not wanted, the days it was taken and is counted, and a note</summary>
            {(["alternativeColours", "unacceptableColours"] as const).map((name) => (
              <ColourField
                key={name}
                name={name}
                isWide
                ownColours={choices.ownColours}
                label={BOOKING[name].label}
                hint={BOOKING[name].hint}
                value={form[name]}
                onChange={(colours) => set({ [name]: colours })}
              />
            ))}
            <fieldset>
              <legend>Crops the client will not have</legend>
              <div className="row">
                {choices.crops.map(({ id, name }) => (
                  <label key={id} className="check">
                    <input
                      type="checkbox"
                      checked={form.unacceptableCropIds.includes(id)}
                      onChange={({ target }) =>
                        set({
                          unacceptableCropIds: target.checked
                            ? [...form.unacceptableCropIds, id]
                            : form.unacceptableCropIds.filter((cropId) => cropId !== id),
                        })
                      }
                    />
                    {name}
                  </label>
                ))}
              </div>
            </fieldset>
            <DayField
              name="takenOn"
              label={BOOKING.takenOn.label}
              hint={bookingId === null ? "Left empty, today." : BOOKING.takenOn.hint}
              value={form.takenOn}
              onChange={(takenOn) => set({ takenOn })}
            />
            <DayField
              name="finalDueOn"
              label={BOOKING.finalDueOn.label}
              hint={BOOKING.finalDueOn.hint}
              value={form.finalDueOn}
              onChange={(finalDueOn) => set({ finalDueOn })}
            />
            <AreaField name="note" label="Note" value={form.note} onChange={(note) => set({ note })} />
          </details>
        </div>
        <CoveragePanel answer={answer}>
          <SaveBooking submit={bookingId === null ? "Save the booking" : "Save the changes"} />
        </CoveragePanel>
      </div>
      <ShortBar answer={answer} />
    </Form>
  );
}

/** A booking that stands otherwise: as an enquiry or a hold it lapses by the farm's habit, unless another day was typed. */
function restanding({ lapsesAfter }: BookingForm, status: Status, lapse: Choices["lapse"]): Partial<BookingForm> {
  if (status !== "enquiry" && status !== "held") return { status };
  const isHabit = ["", lapse.enquiry, lapse.held].includes(lapsesAfter);
  return isHabit ? { status, lapsesAfter: lapse[status] } : { status };
}
