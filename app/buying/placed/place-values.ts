import { z } from "zod";
import type { PurchaseOrder } from "#db/write/purchases";
import type { Day } from "#lib/domain/day";
import { measureIn } from "#lib/domain/measures";
import type { Parsed } from "#lib/domain/problem";
import { PURCHASE, purchaseDraftSchema } from "#lib/domain/records/purchase";
import { COLOURS } from "#lib/domain/words";
import { nameOfBought } from "#lib/plan/words/purchase-words";
import type { FormValues } from "../../ui/form-values";

/** More flowers than arrive on a day. */
const MOST = 500;

/** A line of a slip, as the page wrote it into the form. */
const slipLine = z.object({ cropId: z.int(), bookingId: z.int(), shortStems: PURCHASE.stemsForBooking.schema });
export type SlipLine = z.infer<typeof slipLine>;

const head = z.object({ supplier: PURCHASE.supplier.schema, arrivesOn: PURCHASE.arrivesOn.schema });

/** Reads a slip as it was ordered: from whom, for when, and of each flower its bunches, colour and price. A line of no bunches was not ordered. */
export function ordersOf(values: FormValues, today: Day): Parsed<PurchaseOrder[]> {
  const lines = values.parse(z.array(slipLine).min(1).max(MOST), values.json("lines"));
  const whole = values.parse(head, { supplier: values.text("supplier"), arrivesOn: values.text("arrivesOn") });
  if (!lines.ok) return lines;
  const orders = lines.parsed.flatMap((line, index) =>
    orderOf(values, { line, index, today, ...(whole.ok ? whole.parsed : { supplier: "not named", arrivesOn: today }) }),
  );
  if (whole.ok && orders.length === 0) values.refuse("lines[0].bunchCount", "order one bunch at least");
  return whole.ok && orders.length > 0 && values.refusal().problems.length === 0
    ? { ok: true, parsed: orders }
    : values.refusal();
}

type Ordered = z.infer<typeof head> & { readonly line: SlipLine; readonly index: number; readonly today: Day };

function orderOf(values: FormValues, { line, index, today, supplier, arrivesOn }: Ordered): PurchaseOrder[] {
  const at = (name: string) => `lines[${index}].${name}`;
  const bunchCount = values.number(at("bunchCount"));
  if (bunchCount === 0) return [];
  const colour = values.parse(z.enum(COLOURS, "choose a colour"), values.text(at("colour")), at("colour"));
  const read = values.parse(
    purchaseDraftSchema,
    {
      supplier,
      orderedOn: today,
      arrivesOn,
      varietyId: 0,
      bunchCount,
      bunchStems: values.number(at("bunchStems")),
      bunchCents: values.numberOrNull(at("bunchCents"), { measure: measureIn("us", "dollars") }),
      daysToOpen: values.text(at("daysToOpen")) === "" ? 0 : values.number(at("daysToOpen")),
      bookingId: line.bookingId,
      stemsForBooking: line.shortStems,
      arrivedOn: null,
      arrivedStems: null,
    },
    `lines[${index}]`,
  );
  if (!read.ok || !colour.ok) return [];
  const { varietyId: _, ...order } = read.parsed;
  const flower = { cropId: line.cropId, name: nameOfBought(colour.parsed), colour: colour.parsed };
  return [{ ...order, flower }];
}

/** Reads what came of some purchases today, by their ids. */
export function arrivalsOf(values: FormValues, today: Day) {
  const ids = values.parse(z.array(z.int()).min(1).max(MOST), values.json("ids"));
  if (!ids.ok) return ids;
  const arrivals = ids.parsed.map((id) => ({ id, arrivedStems: values.number(`arrived[${id}]`) }));
  for (const { id, arrivedStems } of arrivals)
    if (!Number.isNaN(arrivedStems)) values.parse(PURCHASE.arrivedStems.schema, arrivedStems, `arrived[${id}]`);
  const refused = values.refusal();
  return refused.problems.length > 0 ? refused : ({ ok: true, parsed: { arrivedOn: today, arrivals } } as const);
}
