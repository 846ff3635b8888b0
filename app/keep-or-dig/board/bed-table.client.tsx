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

/** A strip is drawn again only when its own bed turns. */
const Strip = memo(BedStrip);

/** Every candidate bed: its tick, its bloom over the weeks that are short, what it fills and saves while the others are as ticked. */
export function BedTable({ rows, units, blooms, shortMondays, keptBedIds, worths, turn }: Props) {
  const worthOf = new Map((worths.answer ?? []).map((worth) => [worth.bedId, worth]));
  const kept = new Set(keptBedIds);
  const folds = useMemo(() => bedFolds(rows), [rows]);
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
    ...worthColumns(worthOf, worths, units),
  ];
  return (
    <>
      {worths.problem && (
        <p className="notice bad" role="alert">
          The worth of the beds could not be worked out: {worths.problem}
        </p>
      )}
      {folds.map(({ title, rows: some }, index) => {
        const table = (
          <Table
            caption={title === null ? "Candidate beds, kept or dug" : `Beds ${title}, kept or dug`}
            isCaptionHidden
            className="keep-beds"
            columns={columns}
            rows={some}
            keyOf={({ id }) => id}
            rowClass={({ id }) => (kept.has(id) ? "kept-row" : undefined)}
            insteadOf={({ id, forbidden }) =>
              forbidden.length > 0
                ? { from: BED_COLUMNS.length + 2, words: <MustBeDug id={id} why={forbidden} /> }
                : null
            }
            isInLines
          />
        );
        if (title === null) return <Fragment key="all">{table}</Fragment>;
        return (
          <details key={title} className="fold prints-open" open={index === 0}>
            <summary>
              {title}{" "}
              <small>
                {countOf(some.length, "bed")}, {some.filter(({ id }) => kept.has(id)).length} kept
              </small>
            </summary>
            {table}
          </details>
        );
      })}
      <p className="small soft worth-status" role="status">
        {worths.isStale && !worths.problem && `Working out what each of ${countOf(rows.length, "bed")} is worth…`}
      </p>
      <TableKey />
    </>
  );
}

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

/** What a bed is worth, once that is worked out; its place is kept until then. */
function worthColumns(
  worthOf: ReadonlyMap<number, BedWorth>,
  { answer, isStale }: Props["worths"],
  units: Units,
): readonly Column<BedRow>[] {
  const mostCents = Math.max(1, ...(answer ?? []).map(({ worthCents }) => Math.abs(worthCents)));
  const column = (
    head: string,
    className: string,
    words: (worth: BedWorth, row: BedRow) => ReactNode,
  ): Column<BedRow> => ({
    head,
    className,
    cell: (row) => {
      const worth = worthOf.get(row.id);
      return worth ? <span data-stale={isStale}>{words(worth, row)}</span> : <span className="soft">…</span>;
    },
  });
  return [
    column("Short focal stems filled", "fills", ({ focalStems, weeks }) => (
      <>
        {stemsInWords(focalStems)}
        <span className="visually-hidden"> {weeks.length > 0 ? weeksInWords(weeks) : "none filled"}</span>
      </>
    )),
    column("Saves, against the other way", "worth", (worth) => (
      <>
        <SavingCell worth={worth} mostCents={mostCents} />
        {worth.wouldBreak.map((limit) => (
          <span key={limit.resource} className="small why-not">
            The other way it would take {limitInWords(limit, units)}.
          </span>
        ))}
      </>
    )),
    column("Keeping pays at a survival", "pays-at", (worth, row) => <SurvivalThatPays worth={worth} row={row} />),
  ];
}
