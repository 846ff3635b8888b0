import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { inFull, isoWeekOf, mondayOf, toDayNumber, weekInWords, yearOf } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { stemsCutUnrecorded } from "#lib/plan/road/cut-unrecorded";
import { isCutFor, isLapsed } from "#lib/plan/road/lapsed";
import { stretchedByBooking } from "#lib/plan/road/stretched";
import { eventDaysInWords } from "#lib/plan/words/event-days-words";
import { standInWords } from "#lib/plan/words/lapse-words";
import { countOf } from "#lib/plan/words/numbers";
import { stretchInWords } from "#lib/plan/words/stretch-words";
import { unrecordedInWords } from "#lib/plan/words/unrecorded-words";
import { OrderedFor } from "../../buying/placed/ordered-for";
import { today } from "../../clock";
import { Cautions } from "../../frame/cautions";
import { loadFarm, loadPlan } from "../../load";
import { FlowerHeads } from "../../look/flower-heads";
import { mayOpen } from "../../people/allowed";
import { LinkIfTheirs } from "../../people/link-if-theirs";
import { roleNow } from "../../people/who";
import { Form } from "../../ui/form.client";
import { ShortState } from "../../ui/short-state";
import { changeStatus, deleteBooking } from "../actions";
import { BookingEditor } from "../editor/booking-editor.client";
import { choicesOf, formOf } from "../editor/draft";
import { FinalCountCard } from "../final-count/final-count-card";
import { reopenBooking } from "../lapses/lapse-actions";
import { Posy } from "../posy";
import { PromiseCard } from "../promises/promise-card";

type Props = { params: Promise<{ id: string }> };

const findBooking = async ({ params }: Props) => {
  const { id } = await params;
  return loadFarm().bookings.find((booking) => String(booking.id) === id);
};

export async function generateMetadata(props: Props): Promise<Metadata> {
  return { title: (await findBooking(props))?.client ?? "No such booking" };
}

/** One booking: how far it is covered, and the form to change it. */
export default async function BookingPage(props: Props) {
  const booking = await findBooking(props);
  if (!booking) notFound();
  const plan = loadPlan(yearOf(booking.eventOn));
  const { decimalMark } = plan.snapshot.farm;
  const covered = coverageByBooking(plan.match, plan.gaps).get(booking.id);
  const stretched = stretchedByBooking(plan.snapshot, plan.match).get(booking.id);
  const unrecorded = unrecordedInWords(stemsCutUnrecorded(plan.match, plan.today, booking.id), covered?.needStems ?? 0);
  const named = new Set(booking.stemLines.map(({ cropId }) => cropId));
  const crops = new Set([
    ...plan.snapshot.crops.filter(({ id }) => named.has(id)),
    ...plan.match.servings
      .filter(({ needIndex }) => plan.match.needs[needIndex].booking.id === booking.id)
      .map(({ supplyIndex }) => plan.match.supplies[supplyIndex].crop),
    ...plan.buying.filter(({ gap }) => gap.need.booking.id === booking.id).map(({ crop }) => crop),
  ]);
  return (
    <>
      <p className="crumb">
        <a href="/bookings">Bookings</a>
      </p>
      <FlowerHeads />
      <div className="row apart">
        <div>
          <h1>{booking.client}</h1>
          <p className="lead">
            {inFull(booking.eventOn)}, <strong>{standInWords(booking, today())}</strong>;{" "}
            <LinkIfTheirs href={`/weeks/${isoWeekOf(booking.eventOn)}`}>
              {weekInWords(mondayOf(booking.eventOn))}
            </LinkIfTheirs>
          </p>
          {booking.status !== "cancelled" && (
            <p className="note">
              Event days: {eventDaysInWords(booking.eventOn, eventDaysOf(plan.snapshot.farm, booking))}.
            </p>
          )}
          {covered && (
            <p>
              <ShortState stems={covered.shortStems} all="all covered" /> of {countOf(covered.needStems, "stem")}
            </p>
          )}
          <OrderedFor snapshot={plan.snapshot} bookingId={booking.id} today={toDayNumber(today())} />
          {stretched && <p className="note">{stretchInWords(stretched)}</p>}
          {unrecorded && <p className="note">{unrecorded}</p>}
        </div>
        <Posy colours={booking.palette} />
      </div>
      <div className="actions">
        {isCutFor(booking) && mayOpen(roleNow(), "/picking") && (
          <a className="button" href={`/picking?booking=${booking.id}`}>
            Pick list
          </a>
        )}
        <a className="button" href={`/bookings/new?copy=${booking.id}`}>
          Copy to a new booking
        </a>
        {isLapsed(booking, today()) && booking.eventOn >= today() && (
          <Form action={reopenBooking} hidden={{ bookingId: booking.id }} submit="Reopen" label="Reopen the booking" />
        )}
        <Form
          action={changeStatus}
          hidden={{ bookingId: booking.id, status: booking.status === "cancelled" ? "enquiry" : "cancelled" }}
          submit={booking.status === "cancelled" ? "Take it back as an enquiry" : "Cancel the booking"}
          label="Where the booking stands"
          isQuiet
        />
        {booking.status === "cancelled" && (
          <Form
            action={deleteBooking}
            hidden={{ bookingId: booking.id }}
            submit="Remove it altogether"
            label="Remove the booking"
            isQuiet
          />
        )}
      </div>
      {booking.status === "confirmed" && booking.eventOn >= today() && <PromiseCard plan={plan} booking={booking} />}
      <FinalCountCard snapshot={plan.snapshot} booking={booking} today={today()} />
      <BookingEditor
        key={JSON.stringify(formOf(booking, decimalMark))}
        bookingId={booking.id}
        form={formOf(booking, decimalMark)}
        choices={choicesOf(plan.snapshot, today())}
      />
      <Cautions crops={[...crops]} />
    </>
  );
}
