import { inShort, toDay, withWeekday } from "#lib/domain/day";
import type { BuyIn } from "#lib/plan/road/buying";
import { inMoney, inWholes } from "#lib/plan/words/numbers";
import { ColourWords } from "../ui/colour-words";
import { type Column, Table } from "../ui/table";
import { firstOf, RestOf } from "./first-rows";

const columnsOn = (now: number): readonly Column<BuyIn>[] => [
  {
    head: "Order by",
    cell: ({ orderBy }) => (
      <>
        {withWeekday(toDay(orderBy))}
        {orderBy < now && <strong className="short-word"> late: call now</strong>}
      </>
    ),
  },
  {
    head: "For",
    kind: "name",
    cell: ({ gap: { need } }) => (
      <>
        <a href={`/bookings/${need.booking.id}`}>{need.booking.client}</a>, {inShort(toDay(need.eventDay))}{" "}
        <span className="tag">{need.booking.status}</span>
      </>
    ),
  },
  {
    head: "What",
    cell: ({ gap: { need }, crop }) => (
      <>
        {need.role}
        {need.cropId === null ? "" : `, ${crop.name.toLowerCase()}`} <ColourWords colours={need.colours} />
      </>
    ),
  },
  { head: "Short", unit: "stems", kind: "number", cell: ({ gap }) => inWholes(gap.shortStems) },
  {
    head: "Bunches",
    kind: "number",
    cell: ({ bunchCount, crop }) => `${inWholes(bunchCount)} of ${inWholes(crop.bunchStems.count)}`,
  },
  { head: "Left over", unit: "stems", kind: "number", cell: ({ leftOverStems }) => inWholes(leftOverStems) },
  {
    head: "About",
    kind: "number",
    cell: ({ costCents, crop }) => (
      <>
        {inMoney(costCents)} <span className="soft small">({crop.buyInCents.mark})</span>
      </>
    ),
  },
];

/** A row a gap, first the one to order first; a day to order by that has passed is marked in words. */
export function BuyInTable({ lines, now, isAllShown }: { lines: readonly BuyIn[]; now: number; isAllShown: boolean }) {
  const shown = firstOf(lines, isAllShown);
  return (
    lines.length > 0 && (
      <>
        <Table caption="To buy in" columns={columnsOn(now)} rows={shown} keyOf={({ gap }) => gap.needIndex} />
        <RestOf shown={shown} all={lines} rows="lines" />
      </>
    )
  );
}
