import { toDayNumber } from "#lib/domain/day";
import { ROLES, type Role } from "#lib/domain/words";
import type { Plan } from "#lib/plan/road/plan";
import { bookingsOf } from "#lib/plan/road/seasons";
import { shortWeeks } from "#lib/plan/road/short-weeks";
import { stretchedByBooking } from "#lib/plan/road/stretched";
import { cutsBehind, isAhead, seasonSums } from "#lib/plan/road/to-come";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { cutsInWords, eventsInWords } from "#lib/plan/words/to-come-words";

/** The other roles that are short, a line each, which shows that role. */
export function AlsoShort({ plan, role }: { plan: Plan; role: Role }) {
  const shorts = shortWeeks(plan);
  const others = ROLES.filter((other) => other !== role && shorts.some((short) => short.role === other));
  if (others.length === 0) return null;
  return (
    <section aria-labelledby="also-short">
      <h2 id="also-short">Also short</h2>
      <ul className="leaders">
        {others.map((other) => {
          const weeks = shorts.filter((short) => short.role === other);
          return (
            <li key={other}>
              <svg className="gl plain-sign" width="20" height="20" aria-hidden="true">
                <use href={`#r-${other}`} />
              </svg>
              <a href={`/?role=${other}#weeks`}>{other}</a>
              <span className="dots" />
              <span>
                <b>{inWholes(weeks.reduce((sum, { shortStems }) => sum + shortStems, 0))}</b> in{" "}
                {countOf(weeks.length, "week")}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

const NOT_STRETCHED = { stems: 0, cents: 0 };

/** The figures of what is still to come: how much is covered, how many bookings in full, what is held at a stretch, what buying in would cost, what is over; and what is behind. */
export function SeasonSoFar({ plan }: { plan: Plan }) {
  const { match, surplus, seasonYear } = plan;
  const { ahead, behind } = seasonSums(plan);
  const own = new Set(
    bookingsOf(match, seasonYear).flatMap(({ id, eventOn }) => (isAhead(plan, toDayNumber(eventOn)) ? [id] : [])),
  );
  const stretched = [...stretchedByBooking(plan.snapshot, match)]
    .filter(([bookingId]) => own.has(bookingId))
    .reduce((sum, [, { stems, cents }]) => ({ stems: sum.stems + stems, cents: sum.cents + cents }), NOT_STRETCHED);
  const buying = plan.work.buying.filter(({ gap }) => isAhead(plan, gap.need.eventDay));
  const boughtStems = buying.reduce((sum, { gap }) => sum + gap.shortStems, 0);
  const buyInCents = buying.reduce((sum, line) => sum + line.costCents, 0);
  const rows = [
    {
      name: "Stems covered",
      of: inWholes(ahead.needStems - ahead.shortStems),
      words: `of ${inWholes(ahead.needStems)}`,
      href: "/picking",
    },
    {
      name: "Bookings in full",
      of: inWholes(ahead.fullBookingCount),
      words: `of ${inWholes(ahead.bookingCount)}`,
      href: "/bookings",
    },
    ...(stretched.stems > 0
      ? [
          {
            name: "Held at a stretch",
            of: inWholes(stretched.stems),
            words: `stems, ${inRoundMoney(stretched.cents)} lost`,
            href: "/picking",
          },
        ]
      : []),
    { name: "To buy in", of: inRoundMoney(buyInCents), words: `for ${countOf(boughtStems, "stem")}`, href: "/buying" },
    {
      name: "Nobody’s yet",
      of: inWholes(surplus.reduce((sum, line) => sum + line.stems, 0)),
      words: "stems",
      href: "/buying#surplus",
    },
  ];
  return (
    <section aria-labelledby="so-far">
      <h2 id="so-far">{behind.bookingCount > 0 ? "Still to come" : "The season so far"}</h2>
      <ul className="leaders">
        {rows.map(({ name, of, words, href }) => (
          <li key={name}>
            <a href={href}>{name}</a>
            <span className="dots" />
            <span>
              <b>{of}</b> {words}
            </span>
          </li>
        ))}
      </ul>
      {behind.bookingCount > 0 && (
        <p className="small">
          Behind: {eventsInWords(behind)}; {cutsInWords(cutsBehind(plan))}.
        </p>
      )}
    </section>
  );
}
