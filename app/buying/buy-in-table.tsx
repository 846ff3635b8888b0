import { inShort, toDay, withWeekday } from "#lib/domain/day";
import type { BuyIn } from "#lib/plan/road/buying";
import { ColourWords } from "../ui/colour-words";
import { inMoney, inWholes } from "../ui/numbers";

/** A row a gap, first the one to order first; a day to order by that has passed is marked in words. */
export function BuyInTable({ lines, now }: { lines: readonly BuyIn[]; now: number }) {
  if (lines.length === 0) return null;
  return (
    <table className="cards-on-phone">
      <caption>To buy in</caption>
      <thead>
        <tr>
          <th scope="col">Order by</th>
          <th scope="col">For</th>
          <th scope="col">What</th>
          <th scope="col" className="number">
            Short, stems
          </th>
          <th scope="col" className="number">
            Bunches
          </th>
          <th scope="col" className="number">
            Left over, stems
          </th>
          <th scope="col" className="number">
            About
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ gap, crop, bunchCount, leftOverStems, costCents, orderBy }) => (
          <tr key={gap.needIndex}>
            <td data-label="Order by">
              {withWeekday(toDay(orderBy))}
              {orderBy < now && <strong className="short-word"> late: call now</strong>}
            </td>
            <th scope="row">
              <a href={`/bookings/${gap.need.booking.id}`}>{gap.need.booking.client}</a>,{" "}
              {inShort(toDay(gap.need.eventDay))} <span className="tag">{gap.need.booking.status}</span>
            </th>
            <td data-label="What">
              {gap.need.role}
              {gap.need.cropId === null ? "" : `, ${crop.name.toLowerCase()}`}{" "}
              <ColourWords colours={gap.need.colours} />
            </td>
            <td className="number" data-label="Short">
              {inWholes(gap.shortStems)}
            </td>
            <td className="number" data-label="Bunches">
              {inWholes(bunchCount)} of {inWholes(crop.bunchStems.count)}
            </td>
            <td className="number" data-label="Left over">
              {inWholes(leftOverStems)}
            </td>
            <td className="number" data-label="About">
              {inMoney(costCents)} <span className="soft small">({crop.buyInCents.mark})</span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
