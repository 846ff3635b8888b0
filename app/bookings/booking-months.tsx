import { monthInWords } from "#lib/domain/day";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { type BookingLine, BookingLineRow } from "./booking-line";

type Props = {
  readonly lines: readonly BookingLine[];
  /** What they have in common when they are folded: "done", "cancelled". Without it they stand open. */
  readonly title?: string;
};

/** Bookings under their months, each with its sums; folded, with their sum, when they are over or cancelled. */
export function BookingMonths({ lines, title }: Props) {
  if (lines.length === 0) return null;
  const months = new Map<string, BookingLine[]>();
  for (const line of lines) {
    const month = monthInWords(line.booking.eventOn);
    months.set(month, [...(months.get(month) ?? []), line]);
  }
  const sections = [...months].map(([month, ofMonth]) => (
    <Month key={month} title={month} id={`${title ?? "month"}-${month}`} lines={ofMonth} />
  ));
  if (!title) return sections;
  return (
    <details className="fold">
      <summary>
        {countOf(lines.length, "booking")} {title}
        {title === "done" && <small>{inWholes(sumOf(lines, "needStems"))} stems</small>}
      </summary>
      {sections}
    </details>
  );
}

function Month({ title, id, lines }: { title: string; id: string; lines: readonly BookingLine[] }) {
  const shortStems = sumOf(lines, "shortStems");
  return (
    <section className="booking-month" aria-labelledby={id}>
      <div className="month-head">
        <h2 id={id}>{title}</h2>
        <small>{countOf(lines.length, "event")}</small>
        <small className="line-stems">{inWholes(sumOf(lines, "needStems"))}</small>
        <small className="line-short">{shortStems > 0 ? `${inWholes(shortStems)} short` : "nothing short"}</small>
      </div>
      <ul>
        {lines.map((line) => (
          <BookingLineRow key={line.booking.id} line={line} />
        ))}
      </ul>
    </section>
  );
}

/** Stems of some lines added up. */
export const sumOf = (lines: readonly BookingLine[], what: "needStems" | "shortStems"): number =>
  lines.reduce((sum, line) => sum + line[what], 0);
