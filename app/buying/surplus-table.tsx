import { inShort, toDay, weekInWords } from "#lib/domain/day";
import type { Surplus } from "#lib/plan/road/surplus";
import { type SurplusWeek, surplusWeeks } from "#lib/plan/road/surplus-weeks";
import { inWholes } from "#lib/plan/words/numbers";
import { notWorthCutting } from "#lib/plan/words/surplus-words";
import { ColourWord } from "../ui/colour-words";
import { type Column, Table } from "../ui/table";
import { firstOf, RestOf } from "./first-rows";

const LEAST_STEMS = 20;

const COLUMNS: readonly Column<SurplusWeek>[] = [
  { head: "Week", cell: ({ monday }) => weekInWords(toDay(monday)) },
  {
    head: "Variety",
    kind: "name",
    cell: ({ crop, variety }) => (
      <>
        {crop.name} {variety.name} <ColourWord colour={variety.colour} />
      </>
    ),
  },
  { head: "Stems", kind: "number", cell: ({ stems }) => inWholes(stems) },
  { head: "Of use until", cell: ({ lastUsefulDay }) => inShort(toDay(lastUsefulDay)) },
];

/**
 * What nobody has claimed, week by week: what to offer before it is too late. Small lots are left out, and said so, and blooms of `over` that nobody would cut.
 */
export function SurplusTable({
  surplus,
  over,
  isAllShown,
}: {
  surplus: readonly Surplus[];
  over: readonly Surplus[];
  isAllShown: boolean;
}) {
  const notCut = notWorthCutting(over, surplus);
  const lots = surplusWeeks(surplus).filter((row) => row.stems >= LEAST_STEMS);
  const shown = firstOf(lots, isAllShown);
  return (
    <section aria-labelledby="surplus">
      <h2 id="surplus">All that will be over</h2>
      <p className="soft">
        Stems by week and variety that neither a booking nor a standing order takes, {LEAST_STEMS} or more. Offer them
        three to seven days ahead (common practice).{notCut && ` ${notCut}`}
      </p>
      {lots.length === 0 ? (
        <p>No surplus of {LEAST_STEMS} stems or more.</p>
      ) : (
        <details open={lots.length <= 30 || isAllShown}>
          <summary>{inWholes(lots.length)} lots</summary>
          <Table
            caption="Stems that nobody takes"
            isCaptionHidden
            columns={COLUMNS}
            rows={shown}
            keyOf={({ monday, variety }) => `${monday} ${variety.id}`}
          />
          <RestOf shown={shown} all={lots} rows="lots" />
        </details>
      )}
    </section>
  );
}
