import { toDay, withWeekday } from "#lib/domain/day";
import type { PurchaseSlip } from "#lib/plan/road/purchase-slips";
import { flowerInWords } from "#lib/plan/words/purchase-words";
import { Form } from "../../ui/form.client";
import { TextField } from "../../ui/form-fields.client";
import { receivePurchases } from "./purchase-actions";

/** What a supplier brought: one tap where all came, another number where fewer did, 0 where none. They stand in the cooler then. */
export const ReceiveForm = ({ slip }: { slip: PurchaseSlip }) => (
  <Form
    action={receivePurchases}
    submit="These came"
    label={`What came from ${slip.supplier}, ${withWeekday(toDay(slip.day))}`}
    hidden={{ ids: JSON.stringify(slip.lines.map(({ purchase }) => purchase.id)) }}
  >
    <div className="fields narrow">
      {slip.lines.map((line) => (
        <TextField
          key={line.purchase.id}
          name={`arrived[${line.purchase.id}]`}
          label={flowerInWords(line)}
          unit="stems"
          inputMode="numeric"
          value={String(line.orderedStems)}
        />
      ))}
    </div>
  </Form>
);
