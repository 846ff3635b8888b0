import type { Snapshot } from "#lib/domain/snapshot";
import type { BuyInPrices } from "./buy-in";
import { type BuyIn, buying } from "./buying";
import { type Gap, gaps } from "./gaps";
import { isCutFor } from "./lapsed";
import { type Match, match } from "./match";
import { type OrdersPlan, ordersFinder } from "./orders";
import { type PickLine, pickList, walkedTogether } from "./pick-list";
import { type Surplus, stemsOver, worthCutting } from "./surplus";
import { whenAsked } from "./when-asked";

/**
 * What a season's plan makes people do. Nothing is cut or bought in for an enquiry, so all of it follows from a match of the other bookings alone [N5];
 * where there is no enquiry it is the plan's own. Each part is worked out when it is first asked for.
 */
export type Work = {
  /** Of the bookings that are cut for, of all seasons that meet. */
  readonly match: Match;
  readonly gaps: readonly Gap[];
  readonly buying: readonly BuyIn[];
  /** The standing orders of all seasons that meet, served from what these bookings leave; null where none goes out. */
  readonly orders: OrdersPlan | null;
  /** For these bookings and for standing orders. */
  readonly pickList: readonly PickLine[];
  /** What neither these bookings nor standing orders take. */
  readonly over: readonly Surplus[];
  /** What is over, without blooms that nobody would cut [S2]. */
  readonly surplus: readonly Surplus[];
  /** What is over when enquiries, too, have what the plan's match could give them. */
  readonly unclaimed: readonly Surplus[];
};

/** A season's plan as far as the work needs it; `seasons` are all that meet. */
type Planned = {
  readonly snapshot: Snapshot;
  readonly seasonYear: number;
  readonly seasons: readonly number[];
  readonly match: Match;
  readonly gaps: () => readonly Gap[];
  readonly buying: () => readonly BuyIn[];
};

/** The work that follows from a plan's match. */
export function workOf(planned: Planned, buyIn: BuyInPrices): Work {
  const { snapshot, seasonYear, seasons, match: ofAll } = planned;
  const { farm } = snapshot;
  const hasEnquiries = ofAll.needs.some(({ booking }) => !isCutFor(booking));
  const own = whenAsked(() => {
    if (!hasEnquiries) return ofAll;
    const needs = ofAll.needs.filter(({ booking }) => isCutFor(booking));
    return match(farm, ofAll.supplies, needs, buyIn);
  });
  const short = whenAsked(() => (hasEnquiries ? gaps(farm, own(), seasonYear) : planned.gaps()));
  const toBuy = whenAsked(() => (hasEnquiries ? buying(farm, short(), buyIn) : planned.buying()));
  const ordersBeside = ordersFinder(snapshot, seasons, buyIn);
  const sold = whenAsked(() => ordersBeside(own()));
  const picks = whenAsked(() => {
    const ofBookings = pickList(own(), seasonYear);
    const orders = sold();
    return orders ? walkedTogether(ofBookings, pickList(orders.match, seasonYear)) : ofBookings;
  });
  const over = whenAsked(() => stemsOver(sold()?.match ?? own(), seasonYear));
  const surplus = whenAsked(() => worthCutting(over()));
  const left = whenAsked(() => (hasEnquiries ? stemsOver(ordersBeside(ofAll)?.match ?? ofAll, seasonYear) : over()));
  return {
    get match() {
      return own();
    },
    get gaps() {
      return short();
    },
    get buying() {
      return toBuy();
    },
    get orders() {
      return sold();
    },
    get pickList() {
      return picks();
    },
    get over() {
      return over();
    },
    get surplus() {
      return surplus();
    },
    get unclaimed() {
      return left();
    },
  };
}
