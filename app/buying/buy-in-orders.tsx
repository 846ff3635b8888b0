import { toDay, withWeekday } from "#lib/domain/day";
import type { BuyIn } from "#lib/plan/road/buying";
import { type BuyingSlip, buyingSlips, buyingTotals } from "#lib/plan/road/buying-slips";
import { forWhomInWords, lateInWords, purchasesInWords } from "#lib/plan/words/buying-words";
import { forCount, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { byMonth } from "../ui/by-month";
import { RestOf, ROWS_AT_FIRST } from "./first-rows";
import { Slip } from "./slip";

type Props = { lines: readonly BuyIn[]; now: number; isAllShown: boolean };

/** What is late leads, as bunches with its slips, beside what it all costs; then the next order, then later ones by month, folded with their sums. Sums are of all lines, shown or not. */
export function BuyInOrders({ lines, now, isAllShown }: Props) {
  if (lines.length === 0) return null;
  const slips = buyingSlips(lines);
  const late = slips.filter(({ orderBy }) => orderBy < now);
  const ahead = slips.filter(({ orderBy }) => orderBy >= now);
  const next = ahead.filter(({ orderBy }) => orderBy === ahead[0].orderBy);
  const shown = new Set(isAllShown ? slips : [...firstSlips(slips), ...next]);
  const shownOf = (some: readonly BuyingSlip[]) => some.filter((slip) => shown.has(slip));
  return (
    <>
      <div className="cols buying-top">
        <div>
          <Lead late={late} next={next} now={now} />
          {late.length > 0
            ? shownOf(late).map((slip) => <Slip key={slip.arriveBy} slip={slip} isLate />)
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
      <Later slips={ahead.slice(next.length)} shownOf={shownOf} />
      <RestOf shown={linesOf([...shown])} all={lines} rows="lines" />
    </>
  );
}

/** The first slips, each whole: neither the sum of a slip nor the order that is copied may lack a line. */
function firstSlips(slips: readonly BuyingSlip[]): BuyingSlip[] {
  let lineCount = 0;
  return slips.filter(({ lines }) => {
    const isFirst = lineCount < ROWS_AT_FIRST;
    lineCount += lines.length;
    return isFirst;
  });
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
        wholesaler for today’s. Stems arrive on the day of the last cut for their event, and are ordered as many days
        ahead as your <a href="/farm#week">week</a> says.
      </p>
    </section>
  );
}

type LaterProps = {
  slips: readonly BuyingSlip[];
  shownOf: (some: readonly BuyingSlip[]) => readonly BuyingSlip[];
};

const Later = ({ slips, shownOf }: LaterProps) =>
  slips.length > 0 && (
    <section aria-labelledby="later">
      <h2 id="later">Later</h2>
      {byMonth(slips, ({ orderBy }) => orderBy).map(({ month, rows }) => (
        <details key={month} className="fold">
          <summary>
            Order in {month}: {purchasesInWords(linesOf(rows))}
          </summary>
          <div className="slips">
            {shownOf(rows).map((slip) => (
              <Slip key={slip.arriveBy} slip={slip} />
            ))}
          </div>
          <RestOf shown={linesOf(shownOf(rows))} all={linesOf(rows)} rows="lines" />
        </details>
      ))}
    </section>
  );
