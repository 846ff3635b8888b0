import { inFull, inShort, toDay } from "#lib/domain/day";
import { placeOf } from "#lib/plan/pick-list";
import { type PickDay, pickTotals } from "#lib/plan/pick-sheets";
import { ColourWord } from "../ui/colour-words";
import { countOf, inWholes } from "../ui/numbers";

/** One picking day on one sheet: what to cut where and for whom, boxes to tick, room to write what was really cut. */
export function PickSheet({ day: { cutDay, lines }, forBooking }: { day: PickDay; forBooking: boolean }) {
  const { stems, bunchCount, bucketCount } = pickTotals(lines);
  return (
    <section className={forBooking ? "sheet" : "sheet page"} aria-labelledby={`day-${cutDay}`}>
      <h2 id={`day-${cutDay}`}>
        {inFull(toDay(cutDay))}
        {forBooking && <span className="only-print"> for {lines[0].booking.client}</span>}
      </h2>
      <p>
        {countOf(stems, "stem")}, {countOf(bunchCount, "bunch", "bunches")}, {countOf(bucketCount, "bucket")}
        {forBooking && `, for ${lines[0].booking.client} on ${inShort(lines[0].booking.eventOn)}`}
      </p>
      <table className="cards-on-phone picks">
        <thead>
          <tr>
            <th scope="col">Done</th>
            <th scope="col">Bed</th>
            <th scope="col">Variety</th>
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
        <tbody>
          {lines.map((line) => (
            <tr key={`${placeOf(line.origin)} ${line.variety.id} ${line.booking.id}`}>
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
              <td data-label="Hold">{countOf(line.heldDays, "day")}</td>
              <td data-label="Really cut">
                <span className="write-line" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
