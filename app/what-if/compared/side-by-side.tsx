import type { WhatIf } from "#lib/domain/what-if";
import type { Plan } from "#lib/plan/road/plan";
import { comparison } from "#lib/plan/what-if/comparison";
import { winterTotals } from "#lib/plan/what-if/winter";
import { countOf } from "#lib/plan/words/numbers";
import { wouldBePlan } from "../would-be-plan";
import { ComparedBookings } from "./compared-bookings";
import { ComparedTotals } from "./compared-totals";
import { ComparedWeeks } from "./compared-weeks";
import { AS_IT_STANDS } from "./plan-columns";

/** The season as it stands and under each what-if, side by side: figures, short weeks, and the bookings that change. */
export function SideBySide({ now, whatIfs }: { now: Plan; whatIfs: readonly WhatIf[] }) {
  const wouldBe = whatIfs.map((whatIf) => ({ whatIf, ...wouldBePlan(now.snapshot, whatIf) }));
  const compared = comparison([now, ...wouldBe.map(({ plan }) => plan)], winterTotals);
  const columns = [AS_IT_STANDS, ...whatIfs];
  const unfit = wouldBe.filter(({ misfits }) => misfits.length > 0);
  return (
    <>
      {unfit.map(({ whatIf, misfits }) => (
        <p className="notice bad" key={whatIf.id}>
          <a href={`/what-if/${whatIf.id}`}>{whatIf.name}</a>: {countOf(misfits.length, "change")}{" "}
          {misfits.length === 1 ? "does" : "do"} not fit the farm as it stands: left out of the figures, or held at a
          limit.
        </p>
      ))}
      <ComparedTotals plans={columns} comparison={compared} />
      <p className="hint">
        Labour and materials are those of the winter, as each plan has its beds. Plants that die, tubers gained and an
        early crop forgone stand on <a href="/keep-or-dig">Keep or dig</a>.
      </p>
      <ComparedWeeks plans={columns} weeks={compared.weeks} />
      <ComparedBookings
        plans={columns}
        bookings={compared.bookings}
        knownIds={new Set(now.snapshot.bookings.map(({ id }) => id))}
      />
    </>
  );
}
