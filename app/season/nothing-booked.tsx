import { BareGround } from "../look/bare-ground";

/** A season with beds and no booking: the string has nothing to be measured by yet. */
export const NothingBooked = ({ seasonYear }: { seasonYear: number }) => (
  <section className="season-lead" aria-labelledby="answer">
    <h1 id="answer">Nothing is booked for {seasonYear} yet.</h1>
    <BareGround />
    <p className="lead">
      Enter a booking, and the string shows week by week what it needs, your blooms under it, and bare ground where they
      do not reach.
    </p>
    <p className="actions">
      <a className="button main" href="/bookings/new">
        Enter a booking
      </a>
    </p>
  </section>
);
