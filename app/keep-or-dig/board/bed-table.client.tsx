"use client";

import { Fragment, memo, type ReactNode, useMemo } from "react";
import { toDayNumber } from "#lib/domain/day";
import type { Units } from "#lib/domain/words";
import { limitInWords } from "#lib/plan/words/limit-words";
import { countOf } from "#lib/plan/words/numbers";
import { stemsInWords, weeksInWords } from "#lib/plan/words/worth-words";
import { StripMonths } from "../../beds/bloom-strip";
import type { BedWorth } from "../../threads/jobs";
import { ColourWord } from "../../ui/colour-words";
import { type Column, Table } from "../../ui/table";
import type { BedBlooms } from "../bed-blooms";
import type { BedRow } from "../planner-data";
import { bedFolds } from "./bed-folds";
import { BedStrip } from "./bed-strip";
import { SavingCell } from "./saving-cell";
import { SurvivalThatPays } from "./survival-that-pays";
import { TableKey } from "./table-key";
import type { Answered } from "./use-answer.client";

type Props = {
  rows: readonly BedRow[];
  units: Units;
  blooms: BedBlooms;
  shortMondays: ReadonlySet<string>;
  keptBedIds: readonly number[];
  worths: Answered<readonly BedWorth[] | null>;
  turn: (id: number) => void;
};

/** Every candidate bed: its tick, its bloom over the weeks that are short, what it fills and saves while the others are as ticked. */
export function BedTable({ rows, units, blooms, shortMondays, keptBedIds, worths, turn }: Props) {
  const { answer, isStale, problem } = worths;
  const worthOf = useMemo(() => worthsOf(answer ?? []), [answer]);
  const kept = new Set(keptBedIds);
  const folds = useMemo(() => bedFolds(rows), [rows]);
  return (
    <>
      {problem && (
        <p className="notice bad" role="alert">
          The worth of the beds could not be worked out: {problem}
        </p>
      )}
      <div className="keep-folds" data-stale={isStale}>
        {folds.map(({ title, rows: some }, index) => {
          const keptHere = some.flatMap(({ id }) => (kept.has(id) ? [id] : []));
          const table = (
            <FoldTable
              {...{ title, rows: some, units, blooms, shortMondays, worthOf, turn, keptHere: keptHere.join() }}
            />
          );
          if (title === null) return <Fragment key="all">{table}</Fragment>;
          return (
            <details key={title} className="fold prints-open" open={index === 0}>
              <summary>
                {title}{" "}
                <small>
                  {countOf(some.length, "bed")}, {keptHere.length} kept
                </small>
              </summary>
              {table}
            </details>
          );
        })}
      </div>
      <p className="small soft worth-status" role="status">
        {isStale && !problem && `Working out what each of ${countOf(rows.length, "bed")} is worth…`}
      </p>
      <TableKey />
    </>
  );
}

type FoldProps = Pick<Props, "rows" | "units" | "blooms" | "shortMondays" | "turn"> & {
  title: string | null;
  worthOf: WorthOf;
  /** The ids of the beds kept here, with commas between: text, so that a tick draws its own fold again and no other. */
  keptHere: string;
};

const Strip = memo(BedStrip);

const FoldTable = memo(function FoldTable({
  title,
  rows,
  units,
  blooms,
  shortMondays,
  worthOf,
  keptHere,
  turn,
}: FoldProps) {
  const kept = new Set(keptHere.split(",").map(Number));
  const columns: readonly Column<BedRow>[] = [
    { head: "Keep", className: "keep", cell: (row) => <KeepTick row={row} isKept={kept.has(row.id)} turn={turn} /> },
    ...BED_COLUMNS,
    {
      head: "Bloom over the weeks that are short",
      headShown: blooms.mondays.length > 0 && (
        <StripMonths weeks={{ first: toDayNumber(blooms.mondays[0]), count: blooms.mondays.length }} />
      ),
      className: "strip",
      cell: ({ id }) => <Strip blooms={blooms} bedId={id} isKept={kept.has(id)} shortMondays={shortMondays} />,
    },
    ...worthColumns(worthOf, units),
  ];
  return (
    <Table
      caption={title === null ? "Candidate beds, kept or dug" : `Beds ${title}, kept or dug`}
      isCaptionHidden
      className="keep-beds"
      columns={columns}
      rows={rows}
      keyOf={({ id }) => id}
      rowClass={({ id }) => (kept.has(id) ? "kept-row" : undefined)}
      insteadOf={({ id, forbidden }) =>
        forbidden.length > 0 ? { from: BED_COLUMNS.length + 2, words: <MustBeDug id={id} why={forbidden} /> } : null
      }
      isInLines
    />
  );
});

type TickProps = { row: BedRow; isKept: boolean; turn: (id: number) => void };

const KeepTick = ({ row: { id, name, forbidden }, isKept, turn }: TickProps) => (
  <label className="check keep-check">
    <input
      type="checkbox"
      checked={isKept}
      disabled={forbidden.length > 0}
      aria-describedby={forbidden.length ? `why-${id}` : undefined}
      onChange={() => turn(id)}
    />
    <span className="visually-hidden">Keep {name}</span>
  </label>
);

const MustBeDug = ({ id, why }: { id: number; why: readonly string[] }) => (
  <span className="must-be-dug" id={`why-${id}`}>
    <strong>Dug:</strong> {why.join("; ")}
  </span>
);

const BED_COLUMNS: readonly Column<BedRow>[] = [
  {
    head: "Bed",
    kind: "name",
    cell: ({ id, name }) => (
      <a className="bed-tag" href={`/beds/${id}`}>
        {name}
      </a>
    ),
  },
  {
    head: "Varieties",
    className: "varieties",
    cell: ({ varieties }) =>
      varieties.map(({ name, colour }) => (
        <span key={`${name} ${colour}`} className="variety-line">
          <span className="variety-name">{name} </span>
          <ColourWord colour={colour} />
        </span>
      )),
  },
];

/** Beds by id with what each is worth, and the most that any is worth, in cents. */
type WorthOf = { readonly byBed: ReadonlyMap<number, BedWorth>; readonly mostCents: number };

const worthsOf = (worths: readonly BedWorth[]): WorthOf => ({
  byBed: new Map(worths.map((worth) => [worth.bedId, worth])),
  mostCents: Math.max(1, ...worths.map(({ worthCents }) => Math.abs(worthCents))),
});

/** What a bed is worth, once that is worked out; its place is kept until then. */
function worthColumns({ byBed, mostCents }: WorthOf, units: Units): readonly Column<BedRow>[] {
  const column = (
    head: string,
    headShown: string,
    className: string,
    words: (worth: BedWorth, row: BedRow) => ReactNode,
  ): Column<BedRow> => ({
    head,
    headShown: <span aria-hidden="true">{headShown}</span>,
    className,
    cell: (row) => {
      const worth = byBed.get(row.id);
      return worth ? words(worth, row) : <span className="soft">…</span>;
    },
  });
  return [
    column("Short focal stems filled", "Fills, stems", "fills", ({ focalStems, weeks }) => (
      <>
        {stemsInWords(focalStems)}
        <span className="visually-hidden"> {weeks.length > 0 ? weeksInWords(weeks) : "none filled"}</span>
      </>
    )),
    column("Saves, against the other way", "Saves", "worth", (worth) => (
      <>
        <SavingCell worth={worth} mostCents={mostCents} />
        {worth.wouldBreak.map((limit) => (
          <span key={limit.resource} className="small why-not">
            The other way it would take {limitInWords(limit, units)}.
          </span>
        ))}
      </>
    )),
    column("Keeping pays at a survival", "Keeping pays at", "pays-at", (worth, row) => (
      <SurvivalThatPays worth={worth} row={row} />
    )),
  ];
}
