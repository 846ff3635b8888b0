import { monthAndYear, toDay, withWeekday } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { BuyIn } from "#lib/plan/road/buying";
import { type BuyingSlip, buyingSlips, buyingTotals } from "#lib/plan/road/buying-slips";
import { forWhomInWords, lateInWords, purchasesInWords } from "#lib/plan/words/buying-words";
import { forCount, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { firstOf, RestOf } from "./first-rows";
import { Slip } from "./slip";

type Props = { farm: Farm; lines: readonly BuyIn[]; now: number; isAllShown: boolean };

/** What is late leads, as bunches with its slips, beside what it all costs; then the next order, then later ones by month, folded with their sums. */
export function BuyInOrders({ farm, lines, now, isAllShown }: Props) {
  const shown = firstOf(lines, isAllShown);
  const slips = buyingSlips(farm, shown);
  const late = slips.filter(({ orderBy }) => orderBy < now);
  const ahead = slips.filter(({ orderBy }) => orderBy >= now);
  const next = ahead.filter(({ orderBy }) => orderBy === ahead[0].orderBy);
  const later = ahead.slice(next.length);
  if (lines.length === 0) return null;
  return (
    <>
      <div className="cols buying-top">
        <div>
          <Lead late={late} next={next} now={now} />
          {late.length > 0
            ? late.map((slip) => <Slip key={slip.arriveBy} slip={slip} isLate />)
            : next.map((slip) => <Slip key={slip.arriveBy} slip={slip} />)}
        </div>
        <Costs lines={lines} late={late} next={next} />
      </div>
      {late.length > 0 && next.length > 0 && (
        <section aria-labelledby="next-order">
          <h2 id="next-order">
            Next to order, by {withWeekday(toDay(next[0].orderBy))}: {purchasesInWords(linesOf(next))}
          </h2>
          <div className="slips">
            {next.map((slip) => (
              <Slip key={slip.arriveBy} slip={slip} />
            ))}
          </div>
        </section>
      )}
      <Later slips={later} />
      <RestOf shown={shown} all={lines} rows="lines" />
    </>
  );
}

const linesOf = (slips: readonly BuyingSlip[]): BuyIn[] => slips.flatMap(({ lines }) => lines);

/** The one number of the page: the bunches that are late, or else those to order next. */
function Lead({ late, next, now }: { late: readonly BuyingSlip[]; next: readonly BuyingSlip[]; now: number }) {
  const of = late.length > 0 ? late : next;
  if (of.length === 0) return null;
  const { bunchCount, costCents } = buyingTotals(linesOf(of));
  return (
    <>
      <h2 className="buying-lead">
        <b className={late.length > 0 ? "great state-late" : "great"}>
          {inWholes(bunchCount)} {forCount(bunchCount, "bunch", "bunches")}
        </b>
        {forWhomInWords(of)} {late.length > 0 ? "are late" : `to order by ${withWeekday(toDay(of[0].orderBy))}`}
      </h2>
      <p className="lead">
        {late.length > 0 ? lateInWords(late, now) : "Nothing is late."} About {inRoundMoney(costCents)}.
      </p>
    </>
  );
}

function Costs({
  lines,
  late,
  next,
}: {
  lines: readonly BuyIn[];
  late: readonly BuyingSlip[];
  next: readonly BuyingSlip[];
}) {
  const sums = [
    { name: "Late", cents: buyingTotals(linesOf(late)).costCents },
    { name: "The next order", cents: buyingTotals(linesOf(next)).costCents },
    { name: "All that is still ahead", cents: buyingTotals(lines).costCents },
  ].filter(({ cents }) => cents > 0);
  return (
    <section aria-labelledby="costs">
      <h2 id="costs">What it costs</h2>
      <ul className="leaders">
        {sums.map(({ name, cents }) => (
          <li key={name}>
            <span>{name}</span>
            <span className="dots" />
            <b>{inRoundMoney(cents)}</b>
          </li>
        ))}
      </ul>
      <p className="note">
        Prices are per stem, from memory or the trade unless you set <a href="/farm/crops">your own</a>; ask your
        wholesaler for today’s. Stems arrive on the day that arranging begins, and are ordered as many days ahead as
        your <a href="/farm#week">week</a> says.
      </p>
    </section>
  );
}

const Later = ({ slips }: { slips: readonly BuyingSlip[] }) =>
  slips.length > 0 && (
    <section aria-labelledby="later">
      <h2 id="later">Later</h2>
      {byMonth(slips).map(({ month, ofMonth }) => (
        <details key={month} className="fold">
          <summary>
            Order in {month}: {purchasesInWords(linesOf(ofMonth))}
          </summary>
          <div className="slips">
            {ofMonth.map((slip) => (
              <Slip key={slip.arriveBy} slip={slip} />
            ))}
          </div>
        </details>
      ))}
    </section>
  );

function byMonth(slips: readonly BuyingSlip[]): { month: string; ofMonth: BuyingSlip[] }[] {
  const months = new Map<string, BuyingSlip[]>();
  for (const slip of slips) {
    const month = monthAndYear(toDay(slip.orderBy));
    months.set(month, [...(months.get(month) ?? []), slip]);
  }
  return [...months].map(([month, ofMonth]) => ({ month, ofMonth }));
}
