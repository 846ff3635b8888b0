import { inFull, inShort, toDay } from "#lib/domain/day";
import { type PickLine, placeOf } from "#lib/plan/road/pick-list";
import { type PickDay, pickTotals } from "#lib/plan/road/pick-sheets";
import { ColourWord } from "../ui/colour-words";
import { countOf, inWholes } from "../ui/numbers";

/** What to cut, a line a row; of several days, each under its own heading row. A box to tick, room to write what was really cut. */
export function PickTable({ days, forBooking }: { days: readonly PickDay[]; forBooking: boolean }) {
  return (
    <table className="cards-on-phone picks">
      <thead>
        <tr>
          <th scope="col">Done</th>
          <th scope="col">Bed</th>
          <th scope="col">Variety and stage</th>
          <th scope="col" className="number">
            Stems
          </th>
          <th scope="col" className="number">
            Bunches
          </th>
          {!forBooking && <th scope="col">For</th>}
          <th scope="col">Hold</th>
          <th scope="col">Really cut</th>
        </tr>
      </thead>
      {days.map(({ cutDay, lines }) => (
        <tbody key={cutDay}>
          {forBooking && (
            <tr className="pick-day">
              <th colSpan={7} scope="rowgroup">
                {inFull(toDay(cutDay))}: {totalsInWords(lines)}
              </th>
            </tr>
          )}
          {lines.map((line) => (
            <PickRow
              key={`${placeOf(line.origin)} ${line.variety.id} ${line.booking.id}`}
              line={line}
              forBooking={forBooking}
            />
          ))}
        </tbody>
      ))}
    </table>
  );
}

/** "118 stems, 17 bunches, 10 buckets" */
export function totalsInWords(lines: readonly PickLine[]): string {
  const { stems, bunchCount, bucketCount } = pickTotals(lines);
  return `${countOf(stems, "stem")}, ${countOf(bunchCount, "bunch", "bunches")}, ${countOf(bucketCount, "bucket")}`;
}

const PickRow = ({ line, forBooking }: { line: PickLine; forBooking: boolean }) => (
  <tr className="pick-line">
    <td>
      <span className="tickbox" role="img" aria-label="box to tick" />
    </td>
    <th scope="row">
      {line.origin.kind === "planting" ? (
        <a href={`/beds/${line.origin.planting.bed.id}`}>{line.origin.planting.bed.name}</a>
      ) : (
        "Cooler"
      )}
    </th>
    <td>
      {line.crop.name} <strong>{line.variety.name}</strong> <ColourWord colour={line.variety.colour} />
      <br />
      <span className="small soft">{line.origin.kind === "cooler" ? "already cut" : line.crop.cutStage}</span>
    </td>
    <td className="number" data-label="Stems">
      <strong>{inWholes(line.stems)}</strong>
      {line.stemsToCut > line.stems && <span className="soft small"> cut {inWholes(line.stemsToCut)}</span>}
    </td>
    <td className="number" data-label="Bunches">
      {inWholes(line.bunchCount)} of {inWholes(line.crop.bunchStems.count)}
    </td>
    {!forBooking && (
      <td data-label="For">
        <a href={`/bookings/${line.booking.id}`}>{line.booking.client}</a>, {inShort(line.booking.eventOn)}
      </td>
    )}
    <td data-label="Hold" className="hold">
      {countOf(line.heldDays, "day")}
    </td>
    <td data-label="Really cut">
      <span className="write-line" />
    </td>
  </tr>
);
