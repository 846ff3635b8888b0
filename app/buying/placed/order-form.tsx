import { toDay } from "#lib/domain/day";
import { measureIn, shown } from "#lib/domain/measures";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Purchase } from "#lib/domain/records/purchase";
import { COLOURS } from "#lib/domain/words";
import type { BuyIn } from "#lib/plan/road/buying";
import type { BuyingSlip } from "#lib/plan/road/buying-slips";
import { Form } from "../../ui/form.client";
import { SelectField, TextField } from "../../ui/form-fields.client";
import type { SlipLine } from "./place-values";
import { placeOrder } from "./purchase-actions";

/** What was ordered before, to suggest suppliers and days to open, and how the farm writes numbers. */
export type OrderedBefore = {
  readonly suppliers: readonly string[];
  readonly daysToOpenOf: (cropId: number) => number;
  readonly farm: Farm;
};

/** A slip as it was ordered: supplier and day, and of each flower its bunches, colour, price and days to open. */
export function OrderForm({ slip, before }: { slip: BuyingSlip; before: OrderedBefore }) {
  const lines = slip.lines.map(
    ({ crop, gap }): SlipLine => ({
      cropId: crop.id,
      bookingId: gap.need.booking.id,
      shortStems: gap.shortStems,
    }),
  );
  const what = `to arrive ${toDay(slip.arriveBy)}`;
  return (
    <Form
      action={placeOrder}
      submit="These are ordered"
      label={`Order ${what}`}
      hidden={{ lines: JSON.stringify(lines) }}
    >
      <div className="fields">
        <TextField name="supplier" label="Supplier" suggestions={before.suppliers} />
        <TextField name="arrivesOn" label="Arrives on" type="date" value={toDay(slip.arriveBy)} />
      </div>
      <ul className="lines">
        {slip.lines.map((line, index) => (
          <li key={line.gap.needIndex}>
            <Line line={line} at={`lines[${index}]`} before={before} />
          </li>
        ))}
      </ul>
    </Form>
  );
}

function Line({ line, at, before }: { line: BuyIn; at: string; before: OrderedBefore }) {
  const { crop, colour, bunchCount, gap } = line;
  const { colours, booking } = gap.need;
  const able = (colours.length > 0 ? colours : COLOURS).filter((one) => !booking.unacceptableColours.includes(one));
  const first = colour ?? able.find((one) => crop.buyInColours.includes(one)) ?? able[0];
  const options = [first, ...able.filter((one) => one !== first)].map((one) => ({ value: one, label: one }));
  const bunchStems = crop.bunchStems.count;
  const cents = Math.round(bunchStems * crop.buyInCents.count);
  const named = (label: string) => `${label}, ${crop.name}`;
  return (
    <fieldset>
      <legend>
        {crop.name} <small>for {booking.client}</small>
      </legend>
      <div className="fields narrow">
        <TextField
          name={`${at}.bunchCount`}
          label="Bunches"
          listedAs={named("Bunches")}
          inputMode="numeric"
          value={String(bunchCount)}
        />
        <TextField
          name={`${at}.bunchStems`}
          label="Stems a bunch"
          listedAs={named("Stems a bunch")}
          inputMode="numeric"
          value={String(bunchStems)}
        />
        <SelectField name={`${at}.colour`} label="Colour" listedAs={named("Colour")} options={options} />
        <TextField
          name={`${at}.bunchCents`}
          label="A bunch costs"
          listedAs={named("A bunch costs")}
          unit="$"
          inputMode="decimal"
          value={shown(measureIn(before.farm.units, "dollars"), cents, before.farm.decimalMark)}
        />
        <TextField
          name={`${at}.daysToOpen`}
          label="Days to open"
          listedAs={named("Days to open")}
          inputMode="numeric"
          value={String(before.daysToOpenOf(crop.id))}
        />
      </div>
    </fieldset>
  );
}

/** What earlier purchases tell of the next: each supplier once, and of a crop the days to open of the last one. */
export function orderedBefore(
  farm: Farm,
  purchases: readonly Purchase[],
  cropOf: (varietyId: number) => number,
): OrderedBefore {
  const opening = new Map(purchases.map(({ varietyId, daysToOpen }) => [cropOf(varietyId), daysToOpen]));
  return {
    suppliers: [...new Set(purchases.map(({ supplier }) => supplier))].sort(),
    daysToOpenOf: (cropId) => opening.get(cropId) ?? 0,
    farm,
  };
}
