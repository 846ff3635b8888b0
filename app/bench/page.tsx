import type { Metadata } from "next";
import { addDays, inFull, withWeekday } from "#lib/domain/day";
import { today } from "../clock";
import { loadFarm } from "../load";
import { loadLines } from "../picking/load-lines";
import { Bench } from "../today/bench";
import { EventsOfDay } from "../today/events-of-day";
import { Empty } from "../ui/empty";

export const metadata: Metadata = { title: "Bench" };

/** Days ahead of which the bench is laid out. */
const DAYS_AHEAD = 7;

/** How each day's stems are shared among the weddings on the bench, today's first: for whoever designs and does not cut. */
export default function BenchPage() {
  const now = today();
  const snapshot = loadFarm();
  const days = Array.from({ length: DAYS_AHEAD + 1 }, (_, index) => addDays(now, index))
    .map((day) => ({ day, lines: loadLines({ day }) ?? [] }))
    .filter(({ lines }) => lines.length > 0);
  return (
    <>
      <h1>Bench</h1>
      <EventsOfDay snapshot={snapshot} today={now} />
      {days.length === 0 ? (
        <Empty title="Nothing comes to the bench this week">
          <p>No stems are matched for a picking day up to {withWeekday(addDays(now, DAYS_AHEAD))}.</p>
        </Empty>
      ) : (
        days.map(({ day, lines }, index) => (
          <section key={day} aria-labelledby={`bench-${day}`}>
            <h2 id={`bench-${day}`}>{inFull(day)}</h2>
            <Bench lines={lines} farm={snapshot.farm} isOpen={index === 0} />
          </section>
        ))
      )}
    </>
  );
}
