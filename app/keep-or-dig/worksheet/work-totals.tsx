import { MEASURES } from "#lib/domain/measures";
import type { Units } from "#lib/domain/words";
import type { WinterTotals, WinterWorksheet } from "#lib/plan/winter/worksheet";
import { countOf, inTenths, inWholes } from "../../ui/numbers";

/** What the winter takes, in all and bed by bed. */
export function WorkTotals({ sheet: { beds, totals }, units }: { sheet: WinterWorksheet; units: Units }) {
  const { volume, area } = MEASURES[units];
  const leaves = (of: WinterTotals) => inTenths(of.leafCubicMetres * volume.shownPerStored);
  const tarp = (of: WinterTotals) => inWholes(of.tarpSquareMetres * area.shownPerStored);
  const keptCount = beds.filter(isKept).length;
  return (
    <>
      <p>
        <strong>
          {countOf(keptCount, "bed")} kept, {countOf(beds.length - keptCount, "bed")} dug:
        </strong>{" "}
        {inTenths(totals.hours)} hours, {leaves(totals)} {volume.word} of leaves, {tarp(totals)} {area.word} of tarp,{" "}
        {countOf(totals.dugClumpCount, "clump")} to lift, {inWholes(totals.keptClumpCount)} left in.
      </p>
      <table className="work-totals">
        <caption className="visually-hidden">What the winter takes, bed by bed</caption>
        <thead>
          <tr>
            <th scope="col">Bed</th>
            <th scope="col" className="number not-on-phone">
              Clumps
            </th>
            <th scope="col" className="number">
              Leaves, {volume.word}
            </th>
            <th scope="col" className="number">
              Tarp, {area.word}
            </th>
            <th scope="col" className="number">
              Hours
            </th>
          </tr>
        </thead>
        <tbody>
          {beds.map((bed) => (
            <tr key={bed.bedId}>
              <th scope="row">
                <a href={`/beds/${bed.bedId}`}>{bed.bedName}</a>, {isKept(bed) ? "kept" : "dug"}
              </th>
              <td className="number not-on-phone">{inWholes(bed.keptClumpCount + bed.dugClumpCount)}</td>
              <td className="number">{bed.leafCubicMetres > 0 ? leaves(bed) : "–"}</td>
              <td className="number">{bed.tarpSquareMetres > 0 ? tarp(bed) : "–"}</td>
              <td className="number">{inTenths(bed.hours)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

const isKept = ({ dugClumpCount }: WinterTotals): boolean => dugClumpCount === 0;
