import { formFields } from "#lib/domain/records/form";
import { STANDING_ORDER, type StandingOrder } from "#lib/domain/records/standing-order";
import type { Snapshot } from "#lib/domain/snapshot";
import { ROLES } from "#lib/domain/words";
import { Form } from "../ui/form.client";
import type { Option } from "../ui/form-fields.client";
import { RecordField } from "../ui/record-field";
import { saveOrder } from "./order-actions";

const none = (label: string): Option => ({ value: "", label });
const named = (rows: readonly { readonly id: number; readonly name: string }[]): Option[] =>
  rows.map(({ id, name }) => ({ value: String(id), label: name })).sort((a, b) => a.label.localeCompare(b.label, "en"));

const OF_ROLE: readonly Option[] = ROLES.map((role) => ({ value: role, label: role }));
const PIECE = none("none: a piece, named beside");

/** A standing order, to add (no `order`) or to change. */
export function OrderForm({ snapshot, order }: { snapshot: Snapshot; order?: StandingOrder }) {
  const { farm, crops, recipes } = snapshot;
  const fields = formFields(STANDING_ORDER, order, farm);
  return (
    <Form
      action={saveOrder}
      submit={order ? "Save" : "Add the order"}
      hidden={{ orderId: order?.id ?? "" }}
      label={order ? `Standing order of ${order.buyer}` : "A new standing order"}
      isQuiet={order !== undefined}
    >
      <div className="fields">
        <RecordField {...fields.buyer} />
        <RecordField {...fields.kind} />
        <RecordField {...fields.weekday} />
        <RecordField {...fields.firstOn} />
        <RecordField {...fields.lastOn} />
        <RecordField {...fields.askedCount} />
        <RecordField {...fields.role} choices={order?.role === null ? [PIECE, ...OF_ROLE] : [...OF_ROLE, PIECE]} />
        <RecordField {...fields.cropId} choices={[none("any of the role"), ...named(crops)]} />
        <RecordField {...fields.recipeId} choices={[none("stems, no piece"), ...named(recipes)]} />
        <RecordField {...fields.stemCents} />
        <RecordField {...fields.colours} />
      </div>
    </Form>
  );
}
