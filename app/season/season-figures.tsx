import { ROLES, type Role } from "#lib/domain/words";
import type { Plan } from "#lib/plan/road/plan";
import { bookingsOf } from "#lib/plan/road/seasons";
import { shortWeeks } from "#lib/plan/road/short-weeks";
import { stretchedByBooking } from "#lib/plan/road/stretched";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";

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

/** The figures of the season: how much is covered, how many bookings in full, what is held at a stretch, what buying in would cost, what is over. */
export function SeasonSoFar({ plan }: { plan: Plan }) {
  const { match, gaps, weeks, buying, surplus, seasonYear } = plan;
  const needStems = weeks.flatMap(({ roles }) => roles).reduce((sum, role) => sum + role.needStems, 0);
  const shortStems = gaps.reduce((sum, gap) => sum + gap.shortStems, 0);
  const boughtStems = buying.reduce((sum, { gap }) => sum + gap.shortStems, 0);
  const bookingCount = bookingsOf(match, seasonYear).length;
  const shortBookings = new Set(gaps.map((gap) => gap.need.booking.id)).size;
  const own = new Set(bookingsOf(match, seasonYear).map(({ id }) => id));
  const stretched = [...stretchedByBooking(plan.snapshot, match)]
    .filter(([bookingId]) => own.has(bookingId))
    .reduce((sum, [, { stems, cents }]) => ({ stems: sum.stems + stems, cents: sum.cents + cents }), NOT_STRETCHED);
  const buyInCents = buying.reduce((sum, line) => sum + line.costCents, 0);
  const rows = [
    {
      name: "Stems covered",
      of: inWholes(needStems - shortStems),
      words: `of ${inWholes(needStems)}`,
      href: "/picking",
    },
    {
      name: "Bookings in full",
      of: inWholes(bookingCount - shortBookings),
      words: `of ${bookingCount}`,
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
      <h2 id="so-far">The season so far</h2>
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
    </section>
  );
}
