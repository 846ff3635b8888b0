import type { Crop } from "#lib/domain/crop";
import { inMoney, inTenths } from "../../ui/numbers";

const NUMBERS = [
  { name: "holdDays", label: "Hold, days" },
  { name: "fieldDays", label: "In the field, days" },
  { name: "bunchStems", label: "Bunch, stems" },
  { name: "bucketStems", label: "Bucket, stems" },
  { name: "buyInCents", label: "Buy-in, a stem" },
] as const;

/** Every crop with its numbers, each with its mark. */
export const CropRows = ({
  crops,
  varietyCounts,
}: {
  crops: readonly Crop[];
  varietyCounts: ReadonlyMap<number, number>;
}) => (
  <table className="cards-on-phone">
    <caption className="visually-hidden">Crops and their numbers</caption>
    <thead>
      <tr>
        <th scope="col">Crop</th>
        <th scope="col">Roles</th>
        <th scope="col" className="number">
          Varieties
        </th>
        {NUMBERS.map(({ name, label }) => (
          <th key={name} scope="col" className="number">
            {label}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {crops.map((crop) => (
        <tr key={crop.id}>
          <th scope="row">
            <a href={`/farm/crops/${crop.id}`}>{crop.name}</a>
          </th>
          <td data-label="Roles">{crop.roles.join(", ")}</td>
          <td className="number" data-label="Varieties">
            {varietyCounts.get(crop.id) ?? 0}
          </td>
          {NUMBERS.map(({ name, label }) => (
            <td key={name} className="number" data-label={label}>
              {name === "buyInCents" ? inMoney(crop[name].count) : inTenths(crop[name].count)}{" "}
              <span className="soft small mark">{crop[name].mark}</span>
            </td>
          ))}
        </tr>
      ))}
    </tbody>
  </table>
);
