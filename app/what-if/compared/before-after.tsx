import type { WhatIf } from "#lib/domain/what-if";
import type { Plan } from "#lib/plan/road/plan";
import type { Comparison } from "#lib/plan/what-if/comparison";
import { BeforeAfterTable } from "./before-after-table";
import { ComparedBookings } from "./compared-bookings";
import { ComparedTotals } from "./compared-totals";
import { FocalChart } from "./focal-chart";
import { AS_IT_STANDS } from "./plan-columns";
import { ShortWeeksThen } from "./short-weeks-then";

/** The same season before and after: short weeks in words, both pictures on one scale, figures, and the bookings that change. */
export function BeforeAfter({ whatIf, now, compared }: { whatIf: WhatIf; now: Plan; compared: Comparison }) {
  const columns = [AS_IT_STANDS, whatIf];
  const weeks = compared.weeks;
  const mostStems = mostShown(compared);
  return (
    <section aria-labelledby="before-after">
      <h2 id="before-after">Before and after</h2>
      <ShortWeeksThen weeks={weeks} />
      <div className="before-after">
        {columns.map(({ id, name }, planIndex) => (
          <FocalChart key={id} title={name} weeks={weeks} planIndex={planIndex} mostStems={mostStems} />
        ))}
      </div>
      <p className="small soft">
        Pale ground: focal stems within reach of the week’s events, cut off at the top of the picture. Bar: needed and
        covered. Hatched: short. Both pictures have one scale.
      </p>
      <BeforeAfterTable weeks={weeks} />
      <ComparedTotals plans={columns} comparison={compared} />
      <p className="hint">
        Labour and materials are those of the winter, as each plan has its beds. Plants that die, tubers gained and an
        early crop forgone stand on <a href="/keep-or-dig">Keep or dig</a>.
      </p>
      <ComparedBookings
        plans={columns}
        bookings={compared.bookings}
        knownIds={new Set(now.snapshot.bookings.map(({ id }) => id))}
      />
    </section>
  );
}

/** The most that both pictures must show: the largest need, or supply up to three times that. */
function mostShown({ weeks }: Comparison): number {
  const all = weeks.flatMap(({ focal }) => focal);
  const need = Math.max(10, ...all.map(({ needStems }) => needStems));
  return Math.max(need, ...all.map(({ reachableStems }) => Math.min(reachableStems, 3 * need)));
}
