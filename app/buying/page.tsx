import type { Metadata } from "next";
import { z } from "zod";
import { toDayNumber } from "#lib/domain/day";
import { notToBeHad } from "#lib/plan/road/not-to-be-had";
import { bookingsOf } from "#lib/plan/road/seasons";
import type { Surplus } from "#lib/plan/road/surplus";
import { purchasesInWords } from "#lib/plan/words/buying-words";
import { countOf } from "#lib/plan/words/numbers";
import { today } from "../clock";
import { Cautions } from "../frame/cautions";
import { SeasonHead } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { loadPlan } from "../load";
import { Empty } from "../ui/empty";
import { BuyInOrders } from "./buy-in-orders";
import { Lacking } from "./lacking";
import { PlacedOrders } from "./placed/placed-orders";
import { SurplusNow } from "./surplus-now";
import { SurplusTable } from "./surplus-table";

export const metadata: Metadata = { title: "Buying" };

const query = z.object({
  from: z.enum(["today", "start"]).catch("today"),
  show: z.enum(["first", "all"]).catch("first"),
});

/** What to buy in, by the day to order it, for bookings that are more than an enquiry, and what is over and could be sold. */
export default async function BuyingPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { from, show } = query.parse(await searchParams);
  const year = await seasonYear();
  const plan = loadPlan(year);
  const day = today();
  const now = toDayNumber(day);
  const open = plan.work.buying.filter((line) => from === "start" || line.gap.need.eventDay >= now);
  const ahead = plan.work.gaps.filter((gap) => from === "start" || gap.need.eventDay >= now);
  const stems = ahead.reduce((sum, gap) => sum + gap.shortStems, 0);
  const isShown = ({ lastUsefulDay }: Surplus) => from === "start" || lastUsefulDay >= now;
  const lacking = notToBeHad(plan.snapshot, ahead);
  return (
    <>
      <SeasonHead title={`Buying, season ${year}`} seasonYear={year} back="/buying" />
      {bookingsOf(plan.work.match, plan.seasonYear).length === 0 ? (
        <Empty title="Nothing is booked">
          <p>What to buy in follows from bookings and beds: enter a booking first.</p>
          <a className="button main" href="/bookings/new">
            Enter a booking
          </a>
        </Empty>
      ) : ahead.length === 0 ? (
        <p className="notice good">
          <span className="good-word">Nothing to buy in:</span> no stem is short for an event still to come.
        </p>
      ) : (
        <p className="soft">
          {countOf(stems, "stem")} short for events ahead, {purchasesInWords(open)} in whole bunches.
        </p>
      )}
      <Lacking lacking={lacking} />
      <BuyInOrders lines={open} now={now} isAllShown={show === "all"} />
      <PlacedOrders snapshot={plan.snapshot} today={day} />
      <SurplusNow surplus={plan.surplus} now={from === "start" ? Number.NEGATIVE_INFINITY : now} />
      <p className="no-print">
        <a className="button" href="/buying/offers">
          What to offer buyers
        </a>
      </p>
      <SurplusTable
        surplus={plan.surplus.filter(isShown)}
        over={plan.work.over.filter(isShown)}
        isAllShown={show === "all"}
      />
      <Cautions crops={[...new Set(open.map((line) => line.crop))]} />
    </>
  );
}
