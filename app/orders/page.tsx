import type { Metadata } from "next";
import { z } from "zod";
import { inShort, withWeekday } from "#lib/domain/day";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { type DeliveryRow, deliveryRows, deliveryTotals } from "#lib/plan/road/order-rows";
import { countOf, inMoney, inWholes } from "#lib/plan/words/numbers";
import { orderInWords, ordersLead } from "#lib/plan/words/order-words";
import { today } from "../clock";
import { SeasonHead } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { loadPlan } from "../load";
import { Form } from "../ui/form.client";
import { ShortState } from "../ui/short-state";
import { type Column, Table } from "../ui/table";
import { deleteOrder } from "./order-actions";
import { OrderForm } from "./order-form";

export const metadata: Metadata = { title: "Standing orders" };

const query = z.object({ order: z.coerce.number().int().nullable().catch(null) });

/** Who buys every week: what each order gets of the stems that bookings leave, and what that brings. `order` in the address: the one to change. */
export default async function OrdersPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { order: changed } = query.parse(await searchParams);
  const year = await seasonYear();
  const plan = loadPlan(year);
  const { snapshot } = plan;
  const rows = plan.orders ? deliveryRows(plan.orders, year) : [];
  const isToCome = ({ delivery }: DeliveryRow) => delivery.eventOn >= today();
  const toCome = rows.filter(isToCome);
  const gone = rows.filter((row) => !isToCome(row));
  const crops = new ById("crop", snapshot.crops);
  const recipes = new ById("recipe", snapshot.recipes);
  const ofOrder = (list: readonly DeliveryRow[], { id }: StandingOrder) =>
    list.filter(({ delivery }) => delivery.order.id === id);
  const isOver = (order: StandingOrder) => ofOrder(gone, order).length > 0 && ofOrder(toCome, order).length === 0;
  const over = snapshot.standingOrders.filter(isOver);
  const going = snapshot.standingOrders.filter((order) => !isOver(order));
  const names = { crop: (id: number) => crops.get(id).name, recipe: (id: number) => recipes.get(id).name };
  const cardOf = (order: StandingOrder) => (
    <OrderCard
      key={order.id}
      order={order}
      words={orderInWords(order, names)}
      toCome={ofOrder(toCome, order)}
      snapshot={snapshot}
      isChanged={order.id === changed}
    />
  );
  return (
    <>
      <p className="crumb">
        <a href="/bookings">Bookings</a>
      </p>
      <SeasonHead title={`Standing orders of ${year}`} seasonYear={year} back="/orders" />
      <p className="lead">
        {rows.length > 0
          ? ordersLead(deliveryTotals(toCome), deliveryTotals(gone))
          : "A subscription, a market day or a florist’s list takes stems every week, from what bookings leave. None goes out this season yet."}
      </p>
      {going.length > 0 && <ul className="cards">{going.map(cardOf)}</ul>}
      {over.length > 0 && (
        <details className="fold" open={over.some(({ id }) => id === changed)}>
          <summary>{countOf(over.length, "order")} over</summary>
          <ul className="cards">{over.map(cardOf)}</ul>
        </details>
      )}
      {toCome.length > 0 && (
        <details className="fold">
          <summary>
            Delivery by delivery <small>{inWholes(toCome.length)} to come</small>
          </summary>
          <Table
            caption="Deliveries to come"
            isCaptionHidden
            columns={COLUMNS}
            rows={toCome}
            keyOf={({ delivery }) => delivery.booking.id}
          />
        </details>
      )}
      {gone.length > 0 && (
        <details className="fold">
          <summary>
            {countOf(gone.length, "delivery", "deliveries")} gone by{" "}
            <small>{inMoney(deliveryTotals(gone).earnedCents)}</small>
          </summary>
          <Table
            caption="Deliveries gone by"
            isCaptionHidden
            columns={COLUMNS}
            rows={gone}
            keyOf={({ delivery }) => delivery.booking.id}
          />
        </details>
      )}
      <h2>Add an order</h2>
      <OrderForm key={snapshot.standingOrders.length} snapshot={snapshot} />
    </>
  );
}

type CardProps = {
  order: StandingOrder;
  words: string;
  toCome: readonly DeliveryRow[];
  snapshot: Snapshot;
  isChanged: boolean;
};

function OrderCard({ order, words, toCome, snapshot, isChanged }: CardProps) {
  const { needStems, gotStems, earnedCents } = deliveryTotals(toCome);
  return (
    <li id={`order-${order.id}`} className="card">
      <h2 className="card-title">{order.buyer}</h2>
      <p>{words}.</p>
      {needStems > 0 && (
        <p>
          <ShortState stems={needStems - gotStems} all="all there" /> of {inWholes(needStems)}, and brings{" "}
          <b>{inMoney(earnedCents)}</b>
        </p>
      )}
      {isChanged ? (
        <ChangeOrder snapshot={snapshot} order={order} />
      ) : (
        <a href={`/orders?order=${order.id}#order-${order.id}`}>
          Change or take out<span className="visually-hidden">: {order.buyer}</span>
        </a>
      )}
    </li>
  );
}

const ChangeOrder = ({ snapshot, order }: { snapshot: Snapshot; order: StandingOrder }) => (
  <>
    <OrderForm snapshot={snapshot} order={order} />
    <Form
      action={deleteOrder}
      submit="Take out"
      hidden={{ orderId: order.id }}
      label={`Take the order of ${order.buyer} out`}
      isQuiet
    />
    <a href="/orders">Leave it as it is</a>
  </>
);

const COLUMNS: readonly Column<DeliveryRow>[] = [
  {
    head: "Goes out",
    kind: "name",
    cell: ({ delivery }) => `${withWeekday(delivery.eventOn).split(" ")[0]} ${inShort(delivery.eventOn)}`,
  },
  { head: "Buyer", cell: ({ delivery }) => delivery.order.buyer },
  { head: "Asked", unit: "stems", kind: "number", cell: ({ needStems }) => inWholes(needStems) },
  { head: "Gets", unit: "stems", kind: "number", cell: ({ gotStems }) => inWholes(gotStems) },
  { head: "Short", kind: "number", cell: ({ needStems, gotStems }) => <ShortState stems={needStems - gotStems} /> },
  { head: "Brings", kind: "number", cell: ({ earnedCents }) => inMoney(earnedCents) },
];
