import { type Day, inShort } from "./day";
import type { Booking } from "./records/booking";
import type { StandingOrder } from "./records/standing-order";

const ARTICLE = /^(the|an?)\s+/i;

/**
 * Bookings as somebody may know them who cuts for them but is no party to them: the client by the first word of the name, an article left out, and
 * without the note and the price. Clients who would then be called the same are told apart by the day of their event, and on one day by their order.
 */
export function withShortClients(bookings: readonly Booking[]): Booking[] {
  const names = shortNames(bookings.map(({ client, eventOn }) => ({ name: client, on: eventOn })));
  return bookings.map((booking, index) => ({ ...booking, client: names[index], note: "", priceCents: null }));
}

/**
 * Standing orders in the same way: all orders of a buyer under one name, and buyers who would be called the same told apart by the first day of the
 * first of theirs. What a stem brings stays, for the match.
 */
export function withShortBuyers(orders: readonly StandingOrder[]): StandingOrder[] {
  const buyers = [...new Set(orders.map(({ buyer }) => buyer.trim()))];
  const names = shortNames(buyers.map((name) => ({ name, on: firstDay(orders, name) })));
  return orders.map((order) => ({ ...order, buyer: names[buyers.indexOf(order.buyer.trim())] }));
}

const firstDay = (orders: readonly StandingOrder[], name: string): Day =>
  orders
    .filter(({ buyer }) => buyer.trim() === name)
    .map(({ firstOn }) => firstOn)
    .sort()[0];

function shortNames(named: readonly { readonly name: string; readonly on: Day }[]): string[] {
  const firsts = named.map(
    ({ name }) =>
      name
        .trim()
        .replace(ARTICLE, "")
        .split(/[\s,]+/, 1)[0] || "client",
  );
  const dated = firsts.map((first, index) => `${first}, ${inShort(named[index].on)}`);
  const firstCounts = counted(firsts);
  const datedCounts = counted(dated);
  const seen = new Map<string, number>();
  return firsts.map((first, index) => {
    if (firstCounts.get(first) === 1) return first;
    const place = (seen.get(dated[index]) ?? 0) + 1;
    seen.set(dated[index], place);
    return datedCounts.get(dated[index]) === 1 ? dated[index] : `${dated[index]} (${place})`;
  });
}

function counted(names: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return counts;
}
