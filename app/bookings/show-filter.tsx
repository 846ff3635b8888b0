import { inWholes } from "#lib/plan/words/numbers";
import type { BookingLine } from "./booking-line";

/** Which bookings to come are shown. */
export const SHOWS = ["all", "short", "open"] as const;
type Show = (typeof SHOWS)[number];

const NAMES: Record<Show, string> = { all: "All", short: "Short", open: "Held or enquiry" };

/** Whether a line belongs to what is shown. */
export const ofShow =
  (show: Show) =>
  ({ booking, shortStems }: BookingLine): boolean =>
    show === "all" || (show === "short" ? shortStems > 0 : booking.status === "held" || booking.status === "enquiry");

/** How many bookings are to come, and the choice between all, the short, and those not confirmed. */
export const ShowFilter = ({ show, lines }: { show: Show; lines: readonly BookingLine[] }) => (
  <div className="row apart">
    <h2 id="to-come">{inWholes(lines.length)} to come</h2>
    <nav className="tabs" aria-label="Bookings shown">
      {SHOWS.map((each) => (
        <a
          key={each}
          href={each === "all" ? "/bookings" : `/bookings?show=${each}#to-come`}
          aria-current={each === show ? "true" : undefined}
        >
          {NAMES[each]}, {lines.filter(ofShow(each)).length}
        </a>
      ))}
    </nav>
  </div>
);
