import { addDays, type Day, inFull, isoWeekday } from "#lib/domain/day";
import type { Match } from "#lib/plan/road/match";
import { openDates } from "#lib/plan/road/open-dates";
import type { Plan } from "#lib/plan/road/plan";
import { countOf } from "#lib/plan/words/numbers";
import { aboutStems } from "./about-stems";
import { DateRows } from "./date-rows";
import { DateStrip } from "./date-strip";
import { DayAnswer } from "./day-answer";
import { weekBookings } from "./week-bookings";

const SATURDAY = 6;

/** `poor`: the matches of the season's poor years. */
type Props = { plan: Plan; asked: Day | null; today: Day; poor: readonly Match[] };

/** The day asked for in words, then every Saturday of the season as a picture and as a table. */
export function DatesView({ plan, asked, today, poor }: Props) {
  const bookingsOf = weekBookings(plan.snapshot);
  const saturdays = openDates(plan, poor);
  const [askedDate] = asked === null ? [] : openDates(plan, poor, [asked]);
  const nearest = asked && addDays(asked, SATURDAY - isoWeekday(asked));
  const ahead = saturdays.filter(({ day }) => day >= today);
  const full = ahead.filter(({ focalStems }) => focalStems === 0);
  const best = ahead.reduce<(typeof ahead)[number] | null>(
    (most, date) => (most === null || date.focalStems > most.focalStems ? date : most),
    null,
  );
  return (
    <>
      {askedDate && <DayAnswer date={askedDate} bookings={bookingsOf(askedDate.day)} today={today} />}
      <section aria-labelledby="saturdays">
        <h2 id="saturdays">Every Saturday of {plan.seasonYear}</h2>
        {best && best.focalStems > 0 && (
          <p>
            Most is likely left on <a href={`/dates?on=${best.day}`}>{inFull(best.day)}</a>: about{" "}
            {countOf(aboutStems(best).stems, "focal stem")}.{" "}
            {full.length > 0 && `Nothing is left on ${countOf(full.length, "Saturday")} still to come.`}
          </p>
        )}
        <p className="hint">
          Left is what blooms within the days it can be held and nobody has claimed: likely in an ordinary year, sure
          enough to promise where an early and a late poor year leave it too. Neighbouring days share stems: what one
          takes, the other loses.
        </p>
        <DateStrip dates={saturdays} bookingCountOf={(day) => bookingsOf(day).length} asked={nearest} />
        <DateRows dates={saturdays} bookingsOf={bookingsOf} asked={asked} />
      </section>
    </>
  );
}
