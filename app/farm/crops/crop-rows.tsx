import type { Crop } from "#lib/domain/records/crop";
import { inMoney, inTenths } from "#lib/plan/words/numbers";
import { type Column, Table } from "../../ui/table";

type Props = { crops: readonly Crop[]; varietyCounts: ReadonlyMap<number, number> };

const marked = (
  name: "holdDays" | "fieldDays" | "bunchStems" | "bucketStems" | "buyInCents",
  head: string,
  unit: string,
): Column<Crop> => ({
  head,
  unit,
  kind: "number",
  cell: ({ [name]: { count, mark } }) => (
    <>
      {name === "buyInCents" ? inMoney(count) : inTenths(count)} <span className="soft small mark">{mark}</span>
    </>
  ),
});

/** Every crop with its numbers, each with its mark. */
export const CropRows = ({ crops, varietyCounts }: Props) => (
  <Table
    caption="Crops and their numbers"
    isCaptionHidden
    columns={[
      { head: "Crop", kind: "name", cell: ({ id, name }) => <a href={`/farm/crops/${id}`}>{name}</a> },
      { head: "Roles", cell: ({ roles }) => roles.join(", ") },
      { head: "Varieties", kind: "number", cell: ({ id }) => varietyCounts.get(id) ?? 0 },
      marked("holdDays", "Hold", "days"),
      marked("fieldDays", "In the field", "days"),
      marked("bunchStems", "Bunch", "stems"),
      marked("bucketStems", "Bucket", "stems"),
      marked("buyInCents", "Buy-in", "a stem"),
    ]}
    rows={crops}
    keyOf={({ id }) => id}
  />
);
