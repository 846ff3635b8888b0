import type { Key, ReactNode } from "react";

/** A column: what it is called, how it is set, and what stands in it. */
export type Column<Row> = {
  /** The heading; where a row is a card on a phone, it stands before the cell. */
  readonly head: string;
  /** What stands in the heading's place for the eye; readers still hear the heading. */
  readonly headShown?: ReactNode;
  /** What the numbers count, after a comma in the heading: "Short, stems". */
  readonly unit?: string;
  /** `name` is the heading of its row; `number` stands right, in figures of one width; `tool` is a control, its heading for readers only. */
  readonly kind?: "text" | "name" | "number" | "tool";
  /** On a phone: `first` needs no heading before it, `none` is left out. A name and a tool need none by themselves. */
  readonly phone?: "first" | "none";
  readonly className?: string;
  readonly cell: (row: Row) => ReactNode;
  /** What stands below the column: its total. */
  readonly foot?: ReactNode;
};

/** Rows under a heading of their own. */
type RowGroup<Row> = { readonly title: ReactNode; readonly rows: readonly Row[] };

type Props<Row> = {
  readonly caption: ReactNode;
  /** Where the words around the table say it already, the caption is for readers only. */
  readonly isCaptionHidden?: boolean;
  readonly columns: readonly Column<Row>[];
  readonly rows?: readonly Row[];
  /** In place of `rows`. */
  readonly groups?: readonly RowGroup<Row>[];
  readonly keyOf: (row: Row) => Key;
  readonly isShort?: (row: Row) => boolean;
  readonly rowClass?: (row: Row) => string | undefined;
  /** Words in place of the cells from the column `from` on, where a row has nothing to put there. */
  readonly insteadOf?: (row: Row) => { readonly from: number; readonly words: ReactNode } | null;
  /** A few narrow columns stay a table on a phone; else each row becomes a card. */
  readonly isNarrow?: boolean;
  /** On a phone a row is two lines, its cells laid out by the screen's own style and named for readers only; in place of a card. */
  readonly isInLines?: boolean;
  readonly className?: string;
};

/** A table from its columns and rows: caption, real headings, units in them, numbers right, totals below. Nothing of a column is said twice. */
export function Table<Row>(props: Props<Row>) {
  const { caption, isCaptionHidden, columns, rows = [], groups = [{ title: null, rows }], className } = props;
  const onPhone = props.isNarrow ? undefined : props.isInLines ? "lines-on-phone" : "cards-on-phone";
  const hasFoot = columns.some(({ foot }) => foot !== undefined);
  return (
    <table className={classes(onPhone, className)}>
      <caption className={classes(isCaptionHidden && "visually-hidden")}>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th
              key={headOf(column)}
              scope="col"
              className={classes(isNumber(column) && "number")}
              data-phone={column.phone}
            >
              {column.kind === "tool" || column.headShown ? (
                <span className="visually-hidden">{column.head}</span>
              ) : (
                headOf(column)
              )}
              {column.headShown}
            </th>
          ))}
        </tr>
      </thead>
      {groups.map(({ title, rows }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a group is known by its place
        <tbody key={index}>
          {title !== null && (
            <tr className="group-head">
              <th scope="rowgroup" colSpan={columns.length}>
                {title}
              </th>
            </tr>
          )}
          {rows.map((row) => (
            <tr key={props.keyOf(row)} className={classes(props.isShort?.(row) && "short-row", props.rowClass?.(row))}>
              <Cells columns={columns} row={row} instead={props.insteadOf?.(row) ?? null} />
            </tr>
          ))}
        </tbody>
      ))}
      {hasFoot && (
        <tfoot>
          <tr>
            {columns.map((column) => (
              <Cell key={headOf(column)} column={column}>
                {column.foot}
              </Cell>
            ))}
          </tr>
        </tfoot>
      )}
    </table>
  );
}

type CellsProps<Row> = {
  columns: readonly Column<Row>[];
  row: Row;
  instead: { readonly from: number; readonly words: ReactNode } | null;
};

const Cells = <Row,>({ columns, row, instead }: CellsProps<Row>) => (
  <>
    {columns.slice(0, instead?.from).map((column) => (
      <Cell key={headOf(column)} column={column}>
        {column.cell(row)}
      </Cell>
    ))}
    {instead && <td colSpan={columns.length - instead.from}>{instead.words}</td>}
  </>
);

function Cell<Row>({ column, children }: { column: Column<Row>; children: ReactNode }) {
  const className = classes(isNumber(column) && "number", column.className);
  if (column.kind === "name")
    return (
      <th scope="row" className={className} data-phone={column.phone}>
        {children}
      </th>
    );
  const leads = column.kind === "tool" || column.phone === "first";
  return (
    <td className={className} data-label={leads ? undefined : column.head} data-phone={column.phone}>
      {children}
    </td>
  );
}

const headOf = <Row,>({ head, unit }: Column<Row>): string => (unit ? `${head}, ${unit}` : head);
const isNumber = <Row,>({ kind }: Column<Row>): boolean => kind === "number";
const classes = (...names: (string | false | undefined)[]): string | undefined =>
  names.filter(Boolean).join(" ") || undefined;
