import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { z } from "zod";
import { type Day, toDayNumber, withWeekday, yearOf } from "#lib/domain/day";
import { daySchema } from "#lib/domain/day-schema";
import { ById } from "#lib/domain/snapshot";
import { buyingSlips } from "#lib/plan/road/buying-slips";
import { purchaseLines } from "#lib/plan/road/purchase-slips";
import { purchasesInWords } from "#lib/plan/words/buying-words";
import { flowerInWords } from "#lib/plan/words/purchase-words";
import { today } from "../../clock";
import { loadFarm, loadPlan } from "../../load";
import { Form } from "../../ui/form.client";
import { OrderForm, orderedBefore } from "../placed/order-form";
import { cancelPurchase } from "../placed/purchase-actions";
import { PurchaseForm } from "../placed/purchase-form";

export const metadata: Metadata = { title: "Order" };

const query = z.object({
  day: daySchema.nullable().catch(null),
  purchase: z.coerce.number().int().nullable().catch(null),
});

/** What was ordered, to write down: the slip of a day, one flower to change or cancel, or an order that no gap asked for. */
export default async function OrderPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { day, purchase } = query.parse(await searchParams);
  return (
    <>
      <p className="crumb">
        <a href="/buying">Buying</a>
      </p>
      {day ? <OfSlip day={day} /> : purchase ? <OfPurchase id={purchase} /> : <Another />}
    </>
  );
}

function OfSlip({ day }: { day: Day }) {
  const { snapshot, work } = loadPlan(yearOf(day));
  const { farm, varieties, purchases } = snapshot;
  const slip = buyingSlips(work.buying).find(({ arriveBy }) => arriveBy === toDayNumber(day));
  const varietyOf = new ById("variety", varieties);
  return (
    <>
      <h1>Ordered for {withWeekday(day)}</h1>
      {slip ? (
        <>
          <p className="lead">
            {purchasesInWords(slip.lines)}. Once it is written down it counts as arriving and leaves the list to order.
            A flower of no bunches is left on the list.
          </p>
          <OrderForm slip={slip} before={orderedBefore(farm, purchases, (id) => varietyOf.get(id).cropId)} />
        </>
      ) : (
        <p className="notice good">Nothing is left to order for this day.</p>
      )}
    </>
  );
}

function OfPurchase({ id }: { id: number }) {
  const snapshot = loadFarm();
  const line = purchaseLines(snapshot).find((one) => one.purchase.id === id);
  if (!line) notFound();
  return (
    <>
      <h1>
        {flowerInWords(line)} from {line.purchase.supplier}
      </h1>
      <PurchaseForm snapshot={snapshot} purchase={line.purchase} today={today()} />
      <Form
        action={cancelPurchase}
        submit="Cancel: it does not come"
        label={`Cancel ${flowerInWords(line)}`}
        hidden={{ purchaseId: id }}
        isQuiet
      />
    </>
  );
}

const Another = () => (
  <>
    <h1>Another order</h1>
    <p className="lead">Stems that no booking is short of, or a variety with a name.</p>
    <PurchaseForm snapshot={loadFarm()} today={today()} />
  </>
);
