import type { Plan } from "#lib/plan/road/plan";
import { bookingsOf } from "#lib/plan/road/seasons";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";

/** Four figures of the season: how much is covered, how many bookings in full, what buying in would cost, what is over. */
export function SeasonFigures({ plan }: { plan: Plan }) {
  const { match, gaps, weeks, buying, surplus, seasonYear } = plan;
  const needStems = weeks.flatMap(({ roles }) => roles).reduce((sum, role) => sum + role.needStems, 0);
  const shortStems = gaps.reduce((sum, gap) => sum + gap.shortStems, 0);
  const bookingCount = bookingsOf(match, seasonYear).length;
  const shortBookings = new Set(gaps.map((gap) => gap.need.booking.id)).size;
  const buyInCents = buying.reduce((sum, line) => sum + line.costCents, 0);
  const surplusStems = surplus.reduce((sum, line) => sum + line.stems, 0);
  const figures = [
    {
      figure: `${inWholes(needStems - shortStems)} of ${inWholes(needStems)}`,
      words: "stems covered from your beds",
      href: "/picking",
    },
    {
      figure: `${bookingCount - shortBookings} of ${bookingCount}`,
      words: "bookings covered in full",
      href: "/bookings",
    },
    { figure: inRoundMoney(buyInCents), words: `to buy in the ${countOf(shortStems, "stem")} short`, href: "/buying" },
    { figure: inWholes(surplusStems), words: "stems that nobody has claimed", href: "/buying#surplus" },
  ];
  return (
    <ul className="cards">
      {figures.map(({ figure, words, href }) => (
        <li className="card" key={words}>
          <span className="figure-number">{figure}</span>
          <a href={href}>{words}</a>
        </li>
      ))}
    </ul>
  );
}
