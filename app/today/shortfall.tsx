import { inShort, isoWeekOf, toDay } from "#lib/domain/day";
import { ById } from "#lib/domain/snapshot";
import type { Gap } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import { type Swap, swapsFor } from "#lib/plan/road/swaps";
import { needInWords } from "#lib/plan/words/gap-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { swapInWords } from "#lib/plan/words/today-words";
import { Cautions } from "../frame/cautions";

/** Swaps offered for each need; the week's page has the rest. */
const SWAPS_SHOWN = 3;

/** What a booking is short of, need by need, each with the swaps that could be cut in time and the bunches that could be bought in. */
export function Shortfall({ plan, gaps, isOpen }: { plan: Plan; gaps: readonly Gap[]; isOpen: boolean }) {
  const crops = new ById("crop", plan.snapshot.crops);
  const offers = gaps.map((gap) => ({ gap, swaps: swapsFor(plan, gap) }));
  const offered = offers.flatMap(({ swaps }) => swaps.slice(0, SWAPS_SHOWN).map(({ crop }) => crop));
  const [first] = gaps;
  return (
    <details className="fold shortfall" open={isOpen}>
      <summary>What could cover it</summary>
      {offers.map(({ gap, swaps }) => (
        <div key={gap.needIndex}>
          <h3>
            <b className="short-word">{inWholes(gap.shortStems)}</b> {needInWords(gap.need, (id) => crops.get(id).name)}
          </h3>
          <ul>
            <Offers swaps={swaps} />
            <Bought plan={plan} gap={gap} />
          </ul>
        </div>
      ))}
      <p className="row">
        <a href={`/bookings/${first.need.booking.id}`}>Change the booking</a>
        <a href={`/weeks/${isoWeekOf(toDay(first.need.eventDay))}`}>Who has the stems</a>
      </p>
      <Cautions crops={[...new Set(offered)]} open />
    </details>
  );
}

function Offers({ swaps }: { swaps: readonly Swap[] }) {
  if (swaps.length === 0) return <li>No free stem of the role is cut in time.</li>;
  const more = swaps.length - SWAPS_SHOWN;
  return (
    <>
      {swaps.slice(0, SWAPS_SHOWN).map((swap) => (
        <li key={swap.variety.id}>Swap: {swapInWords(swap)}</li>
      ))}
      {more > 0 && <li className="soft">and {countOf(more, "more variety", "more varieties")} to swap</li>}
    </>
  );
}

function Bought({ plan, gap }: { plan: Plan; gap: Gap }) {
  const line = plan.work.buying.find((one) => one.gap === gap);
  if (!line) return <li>None in these colours is in trade now.</li>;
  const { crop, colour, bunchCount, orderBy } = line;
  const isLate = plan.today !== null && orderBy < plan.today;
  return (
    <li>
      <a href="/buying">Buy in</a> {countOf(bunchCount, "bunch", "bunches")} of {colour && `${colour} `}
      {crop.name.toLowerCase()}: order by {inShort(toDay(orderBy))}
      {isLate && ", which is past: call now"}
    </li>
  );
}
