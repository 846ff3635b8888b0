import { type Day, inShort } from "#lib/domain/day";
import type { PlannedSpray } from "#lib/domain/list-age";
import type { Bed } from "#lib/domain/records/bed";
import type { RowToCut } from "#lib/plan/road/day-to-cut";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { type CannotWait, cannotWait, waitsInWords, waitsWhen, whyItCannot } from "#lib/plan/words/waits-words";
import { sprayOf } from "../field/spray-of";
import { LinkIfTheirs } from "../people/link-if-theirs";
import { ColourWord } from "../ui/colour-words";
import { CutRow } from "./cut-row.client";

/** Rows that a phone shows before the rest is asked for. */
const ROWS_AT_FIRST = 6;

type Props = { rows: readonly RowToCut[]; beds: readonly Bed[]; day: Day; isPast: boolean };

/** What is to be cut and not recorded yet, in walking order: six rows, and the rest folded bed by bed. */
export function CutRows({ rows, beds, day, isPast }: Props) {
  if (rows.length === 0) return null;
  const rest = rows.slice(ROWS_AT_FIRST);
  const notLeft = cannotWait(rows.map((row) => ({ name: nameOf(row), waits: row.waits })));
  const shared = { beds, day, saysItCannotWait: notLeft === null };
  return (
    <section aria-labelledby="to-cut">
      <h2 id="to-cut">{isPast ? "Not recorded: counts as cut as planned" : "To cut, in walking order"}</h2>
      {notLeft && <NotLeft of={notLeft} />}
      <Rows rows={rows.slice(0, ROWS_AT_FIRST)} {...shared} />
      {byBed(rest).map(({ place, ofBed }) => (
        <details key={place} className="fold">
          <summary>
            {place}: {countOf(ofBed.length, "more row")}{" "}
            <small>
              {countOf(
                ofBed.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0),
                "stem",
              )}
            </small>
          </summary>
          <Rows rows={ofBed} {...shared} />
        </details>
      ))}
    </section>
  );
}

/** Rows bed by bed, in the order in which they are walked. */
function byBed(rows: readonly RowToCut[]): { readonly place: string; readonly ofBed: readonly RowToCut[] }[] {
  const beds = new Map<string, RowToCut[]>();
  for (const row of rows) beds.set(row.place, [...(beds.get(row.place) ?? []), row]);
  return [...beds].map(([place, ofBed]) => ({ place, ofBed }));
}

/** Above a list of which most rows cannot wait: how many, and on request which and why. */
const NotLeft = ({ of: { lead, reasons } }: { of: CannotWait }) => (
  <details className="fold no-print">
    <summary>{lead}</summary>
    <ul className="done-rows">
      {reasons.map(({ why, names }) => (
        <li key={why}>
          <span>
            {why}:<br />
            <small>{names.join("; ")}</small>
          </span>
        </li>
      ))}
    </ul>
  </details>
);

type Shared = Pick<Props, "beds" | "day"> & {
  /** Whether a row that cannot wait says so itself, because the list does not. */
  readonly saysItCannotWait: boolean;
};

const Rows = ({ rows, ...shared }: Shared & Pick<Props, "rows">) => (
  <ul className="cut-rows">
    {rows.map((row) => (
      <li key={`${row.bedId} ${row.variety.id}`} className="card">
        <Row row={row} {...shared} />
      </li>
    ))}
  </ul>
);

const NO_SPRAY: PlannedSpray = { noEntryFrom: null, noEntryUntil: null };

/** "G3, Dahlia Emberfold" */
const nameOf = ({ place, crop, variety }: RowToCut): string => `${place}, ${crop.name} ${variety.name}`;

const Row = ({ row, beds, day, saysItCannotWait }: Shared & { row: RowToCut }) => {
  const { bedId, place, variety, crop, stemsToCut, parts, recordedStems, askedInAll, waits } = row;
  const isTold = waits !== null && (saysItCannotWait || whyItCannot(waits) === null);
  return (
    <>
      <h3 className="row apart">
        <span>
          <LinkIfTheirs href={`/beds/${bedId}`} className="bed-tag">
            {place}
          </LinkIfTheirs>{" "}
          {crop.name} {variety.name}
        </span>
        <b className="cut-count">{inWholes(stemsToCut)}</b>
      </h3>
      <p className="small">
        <ColourWord colour={variety.colour} />. {crop.cutStage}.
      </p>
      <p className="small">
        {parts.map(({ booking, stemsToCut: stems }, index) => (
          <span key={booking.id}>
            {index > 0 && ", "}
            {inWholes(stems)} for {booking.client}, {inShort(booking.eventOn)}
          </span>
        ))}
      </p>
      <CutRow
        cutOn={day}
        bedId={bedId}
        varietyId={variety.id}
        name={nameOf(row)}
        stemsToCut={stemsToCut}
        asked={askedInAll}
        seenStems={recordedStems}
        waits={{ when: waits?.isOfUse ? waitsWhen(waits, day) : null, told: isTold ? waitsInWords(waits) : null }}
        spray={sprayOf(beds.find(({ id }) => id === bedId) ?? NO_SPRAY)}
      />
    </>
  );
};
