import { inRoundMoney, inTenths } from "../../ui/numbers";
import type { BedRow } from "../planner-data";

/** What the cost of keeping and of digging each bed is made of. */
export const CostParts = ({ rows }: { rows: readonly BedRow[] }) => (
  <details>
    <summary>What the costs are made of</summary>
    <p className="small">
      Keeping: covering hours, leaves and tarp, plants bought again for clumps that die, and the early crop that the bed
      cannot carry. Digging: lifting, dividing and replanting hours, the store, less what the tubers gained are worth.
      Rates and prices are the farm’s, on <a href="/farm/winter">Winter costs</a>.
    </p>
    <div className="scroller">
      <table className="cards-on-phone">
        <caption className="visually-hidden">Cost of each bed, kept and dug, in parts</caption>
        <thead>
          <tr>
            <th scope="col">Bed</th>
            <th scope="col" className="number">
              Keep: hours
            </th>
            <th scope="col" className="number">
              Labour
            </th>
            <th scope="col" className="number">
              Leaves, tarp
            </th>
            <th scope="col" className="number">
              Plants again
            </th>
            <th scope="col" className="number">
              Early crop
            </th>
            <th scope="col" className="number">
              Dig: hours
            </th>
            <th scope="col" className="number">
              Labour
            </th>
            <th scope="col" className="number">
              Store
            </th>
            <th scope="col" className="number">
              Tubers gained
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, name, keep, dig }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td className="number" data-label="Keep: hours">
                {inTenths(keep.hours)}
              </td>
              <td className="number" data-label="Keep: labour">
                {inRoundMoney(keep.labourCents)}
              </td>
              <td className="number" data-label="Keep: leaves, tarp">
                {inRoundMoney(keep.materialCents)}
              </td>
              <td className="number" data-label="Keep: plants again">
                {inRoundMoney(keep.replacementCents)}
              </td>
              <td className="number" data-label="Keep: early crop">
                {inRoundMoney(keep.freeBedCents)}
              </td>
              <td className="number" data-label="Dig: hours">
                {inTenths(dig.hours)}
              </td>
              <td className="number" data-label="Dig: labour">
                {inRoundMoney(dig.labourCents)}
              </td>
              <td className="number" data-label="Dig: store">
                {inRoundMoney(dig.materialCents)}
              </td>
              <td className="number" data-label="Dig: tubers gained">
                {inRoundMoney(dig.replacementCents)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  </details>
);
