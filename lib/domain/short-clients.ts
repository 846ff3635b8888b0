import { inShort } from "./day";
import type { Booking } from "./records/booking";

const ARTICLE = /^(the|an?)\s+/i;

/**
 * Bookings as somebody may know them who cuts for them but is no party to them: the client by the first word of the name, an article left out, and
 * without the note. Clients who would then be called the same are told apart by the day of their event, and on one day by their order.
 */
export function withShortClients(bookings: readonly Booking[]): Booking[] {
  const firsts = bookings.map(
    ({ client }) =>
      client
        .trim()
        .replace(ARTICLE, "")
        .split(/[\s,]+/, 1)[0] || "client",
  );
  const dated = firsts.map((first, index) => `${first}, ${inShort(bookings[index].eventOn)}`);
  const countOf = counted(firsts);
  const datedCountOf = counted(dated);
  const seen = new Map<string, number>();
  return bookings.map((booking, index) => {
    if (countOf.get(firsts[index]) === 1) return { ...booking, client: firsts[index], note: "" };
    const name = dated[index];
    const place = (seen.get(name) ?? 0) + 1;
    seen.set(name, place);
    return { ...booking, client: datedCountOf.get(name) === 1 ? name : `${name} (${place})`, note: "" };
  });
}

function counted(names: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return counts;
}
