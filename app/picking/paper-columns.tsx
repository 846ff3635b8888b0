import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { placeOf } from "#lib/plan/road/pick-list";
import type { Stand } from "#lib/plan/road/supply";
import type { Column } from "../ui/table";

/** What is cut in one place, of a day or of a week. */
type Cut = { readonly stand: Stand; readonly variety: Variety; readonly crop: Crop };

/** A row on paper: its place is written where it is the first of it. */
export type PaperRow<Row extends Cut> = { readonly row: Row; readonly isFirst: boolean };

/** Rows in the order of a walk. */
export const paperRows = <Row extends Cut>(rows: readonly Row[]): readonly PaperRow<Row>[] =>
  rows.map((row, index) => ({
    row,
    isFirst: index === 0 || placeOf(rows[index - 1].stand) !== placeOf(row.stand),
  }));

export const paperKey = <Row extends Cut>({ row: { stand, variety } }: PaperRow<Row>): string =>
  `${placeOf(stand)} ${variety.id}`;

/** Where, and what: the variety with the letter of its crop's note at the foot. @param more  said behind it of a row */
export const placeColumns = <Row extends Cut>(
  noteOf: ReadonlyMap<number, string>,
  more: (row: Row) => string = () => "",
): readonly Column<PaperRow<Row>>[] => [
  {
    head: "Bed",
    kind: "name",
    cell: ({ row, isFirst }) =>
      isFirst ? placeOf(row.stand) : <span className="visually-hidden">{placeOf(row.stand)}</span>,
  },
  {
    head: "Variety, colour",
    className: "paper-what",
    cell: ({ row }) => (
      <>
        <b>{row.crop.name}</b> {row.variety.name}, {row.variety.colour} <sup>{noteOf.get(row.crop.id)}</sup>
        {more(row)}
      </>
    ),
  },
];
