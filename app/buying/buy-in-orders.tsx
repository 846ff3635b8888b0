import { inShort, monthAndYear, toDay, withWeekday } from "#lib/domain/day";
import type { BuyIn } from "#lib/plan/road/buying";
import { countOf, inMoney, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { ColourWords } from "../ui/colour-words";
import { type Column, Table } from "../ui/table";
import { firstOf, RestOf } from "./first-rows";

const ORDER_BY: Column<BuyIn> = { head: "Order by", cell: ({ orderBy }) => withWeekday(toDay(orderBy)) };

const COLUMNS: readonly Column<BuyIn>[] = [
  {
    head: "For",
    kind: "name",
    cell: ({ gap: { need } }) => (
      <>
        <a href={`/bookings/${need.booking.id}`}>{need.booking.client}</a>, {inShort(toDay(need.eventDay))}{" "}
        {need.booking.status !== "confirmed" && <span className="tag">{need.booking.status}</span>}
      </>
    ),
  },
  {
    head: "What, priced as",
    phone: "first",
    cell: ({ gap: { need }, crop }) => (
      <>
        <svg className="gl plain-sign" width="18" height="18" aria-hidden="true">
          <use href={`#r-${need.role}`} />
        </svg>{" "}
        {need.role}, {crop.name.toLowerCase()} <ColourWords colours={need.colours} />
      </>
    ),
  },
  { head: "Short", unit: "stems", kind: "number", cell: ({ gap }) => inWholes(gap.shortStems) },
  {
    head: "Bunches",
    kind: "number",
    cell: ({ bunchCount, crop }) => `${inWholes(bunchCount)} × ${inWholes(crop.bunchStems.count)}`,
  },
  {
    head: "Left over",
    unit: "stems",
    kind: "number",
    cell: ({ leftOverStems }) => (leftOverStems > 0 ? inWholes(leftOverStems) : ""),
  },
  {
    head: "About",
    kind: "number",
    cell: ({ costCents, crop }) => (
      <>
        {inMoney(costCents)}
        {crop.buyInCents.mark !== "from memory" && <span className="soft small"> ({crop.buyInCents.mark})</span>}
      </>
    ),
  },
];

/** A row a gap. The day to order by stands in it where the words above do not say it. */
const BuyInTable = ({ caption, lines, isOneDay }: { caption: string; lines: readonly BuyIn[]; isOneDay: boolean }) =>
  lines.length > 0 && (
    <Table
      caption={caption}
      isCaptionHidden
      columns={isOneDay ? COLUMNS : [ORDER_BY, ...COLUMNS]}
      rows={lines}
      keyOf={({ gap }) => gap.needIndex}
    />
  );

/** What is late, then the next order, then later ones by month, each with its sum and folded. */
export function BuyInOrders({ lines, now, isAllShown }: { lines: readonly BuyIn[]; now: number; isAllShown: boolean }) {
  const shown = firstOf(lines, isAllShown);
  const isShown = new Set(shown);
  const late = lines.filter(({ orderBy }) => orderBy < now);
  const ahead = lines.filter(({ orderBy }) => orderBy >= now);
  const next = ahead.filter(({ orderBy }) => orderBy === ahead[0].orderBy);
  const months = byMonth(ahead.slice(next.length));
  return (
    <>
      {late.length > 0 && (
        <section aria-labelledby="late">
          <h2 id="late">
            <span className="state late">
              <svg width="18" height="18" aria-hidden="true">
                <use href="#m-late" />
              </svg>
              Late: call now for {sumInWords(late)}
            </span>
          </h2>
          <BuyInTable caption="Late to order" lines={late.filter((line) => isShown.has(line))} isOneDay={false} />
        </section>
      )}
      {next.length > 0 && (
        <section aria-labelledby="next-order">
          <h2 id="next-order">
            Next to order, by {withWeekday(toDay(next[0].orderBy))}: {sumInWords(next)}
          </h2>
          <BuyInTable caption="Next to order" lines={next.filter((line) => isShown.has(line))} isOneDay />
        </section>
      )}
      {months.length > 0 && (
        <section aria-labelledby="later">
          <h2 id="later">Later</h2>
          {months.map(({ month, ofMonth }) => (
            <details key={month} className="fold">
              <summary>
                Order in {month}: {sumInWords(ofMonth)}
              </summary>
              <BuyInTable
                caption={`To order in ${month}`}
                lines={ofMonth.filter((line) => isShown.has(line))}
                isOneDay={false}
              />
            </details>
          ))}
        </section>
      )}
      <RestOf shown={shown} all={lines} rows="lines" />
    </>
  );
}

/** "11 bunches, about $279" */
const sumInWords = (lines: readonly BuyIn[]): string =>
  `${countOf(
    lines.reduce((sum, { bunchCount }) => sum + bunchCount, 0),
    "bunch",
    "bunches",
  )}, about ${inRoundMoney(lines.reduce((sum, { costCents }) => sum + costCents, 0))}`;

function byMonth(lines: readonly BuyIn[]): { month: string; ofMonth: BuyIn[] }[] {
  const months = new Map<string, BuyIn[]>();
  for (const line of lines) {
    const month = monthAndYear(toDay(line.orderBy));
    months.set(month, [...(months.get(month) ?? []), line]);
  }
  return [...months].map(([month, ofMonth]) => ({ month, ofMonth }));
}
