import { toDayNumber } from "#lib/domain/day";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { byMonth } from "../ui/by-month";
import { type BookingLine, BookingLineRow } from "./booking-line";

/** Lines that stand open under each other; more of them are folded by month. */
const OPEN_LINES = 60;

type Props = {
  readonly lines: readonly BookingLine[];
  /** What they have in common when they are folded: "gone by", "cancelled". Without it they stand open, or by month where they are many. */
  readonly title?: string;
};

/** Bookings under their months, each with its sums; folded, with their sum, when they are over or cancelled. */
export function BookingMonths({ lines, title }: Props) {
  if (lines.length === 0) return null;
  const isLong = lines.length > OPEN_LINES;
  const sections = byMonth(lines, ({ booking }) => toDayNumber(booking.eventOn)).map(({ month, rows }, index) => (
    <Month
      key={month}
      month={month}
      id={`${title ?? "month"}-${index}`}
      lines={rows}
      isFolded={isLong ? index > 0 : null}
    />
  ));
  if (!title) return sections;
  return (
    <details className="fold">
      <summary>
        {countOf(lines.length, "booking")} {title}
        {title === "gone by" && <small>{inWholes(sumOf(lines, "needStems"))} stems</small>}
      </summary>
      {sections}
    </details>
  );
}

type MonthProps = {
  month: string;
  id: string;
  lines: readonly BookingLine[];
  /** Null where it cannot be folded. */
  isFolded: boolean | null;
};

function Month({ month, id, lines, isFolded }: MonthProps) {
  const shortStems = sumOf(lines, "shortStems");
  const [name] = month.split(" ");
  const head = (
    <>
      <h2 id={id}>{name}</h2>
      <small>{countOf(lines.length, "event")}</small>
      <small className="line-stems">{inWholes(sumOf(lines, "needStems"))}</small>
      <small className="line-short">{shortStems > 0 ? `${inWholes(shortStems)} short` : "nothing short"}</small>
    </>
  );
  const list = (
    <ul>
      {lines.map((line) => (
        <BookingLineRow key={line.booking.id} line={line} />
      ))}
    </ul>
  );
  return (
    <section className="booking-month" aria-labelledby={id}>
      {isFolded === null ? (
        <>
          <div className="month-head">{head}</div>
          {list}
        </>
      ) : (
        <details className="prints-open" open={!isFolded}>
          <summary className="month-head">{head}</summary>
          {list}
        </details>
      )}
    </section>
  );
}

/** Stems of some lines added up. */
export const sumOf = (lines: readonly BookingLine[], what: "needStems" | "shortStems"): number =>
  lines.reduce((sum, line) => sum + line[what], 0);
