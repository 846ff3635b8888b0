import type { Day } from "#lib/domain/day";
import { formFields } from "#lib/domain/records/form";
import { PURCHASE, type Purchase } from "#lib/domain/records/purchase";
import type { Snapshot } from "#lib/domain/snapshot";
import { eventInWords } from "#lib/plan/words/cooler-words";
import { varietyChoices } from "../../farm/crops/variety-choices";
import { Form } from "../../ui/form.client";
import type { Option } from "../../ui/form-fields.client";
import { RecordField } from "../../ui/record-field";
import { addPurchase, savePurchase } from "./purchase-actions";

type Props = { snapshot: Snapshot; purchase?: Purchase; today: Day };

/** A flower that is ordered, to write down (no `purchase`) or to change. Bookings ahead can be chosen. */
export function PurchaseForm({ snapshot, purchase, today }: Props) {
  const fields = formFields(
    PURCHASE,
    purchase ?? { orderedOn: today, daysToOpen: 0, stemsForBooking: 0 },
    snapshot.farm,
  );
  const varieties = varietyChoices(snapshot);
  const bookings = snapshot.bookings
    .filter(({ id, status, eventOn }) => id === purchase?.bookingId || (status !== "cancelled" && eventOn >= today))
    .sort((a, b) => (a.eventOn < b.eventOn ? -1 : 1))
    .map((booking) => ({ value: String(booking.id), label: eventInWords(booking) }));
  const choose = (label: string): Option => ({ value: "", label });
  return (
    <Form
      action={purchase ? savePurchase : addPurchase}
      submit={purchase ? "Save" : "It is ordered"}
      label={purchase ? `Order ${purchase.id}` : "Another order"}
      hidden={{ purchaseId: purchase?.id ?? "" }}
      isQuiet={purchase !== undefined}
    >
      <div className="fields">
        <RecordField {...fields.supplier} />
        <RecordField {...fields.orderedOn} />
        <RecordField {...fields.arrivesOn} />
        <RecordField
          {...fields.varietyId}
          choices={purchase ? varieties : [choose("choose a variety"), ...varieties]}
        />
        <RecordField {...fields.bunchCount} />
        <RecordField {...fields.bunchStems} />
        <RecordField {...fields.bunchCents} />
        <RecordField {...fields.daysToOpen} />
        <RecordField {...fields.bookingId} choices={[choose("for anybody"), ...bookings]} />
        <RecordField {...fields.stemsForBooking} />
      </div>
    </Form>
  );
}
