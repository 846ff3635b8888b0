"use client";

import type { ReactNode } from "react";
import type { Units } from "#lib/domain/words";
import { limitInWords } from "#lib/plan/words/limit-words";
import { countOf, inPercent, inWholes } from "#lib/plan/words/numbers";
import { breakEvenInWords, isWrongWay, stemsInWords, weeksInWords, worthInWords } from "#lib/plan/words/worth-words";
import type { BedWorth } from "../../threads/jobs";
import { ColourWord } from "../../ui/colour-words";
import { type Column, Table } from "../../ui/table";
import type { BedBlooms } from "../bed-blooms";
import type { BedRow } from "../planner-data";
import { BedStrip } from "./bed-strip";
import type { Answered } from "./use-answer.client";

type Props = {
  rows: readonly BedRow[];
  units: Units;
  blooms: BedBlooms;
  shortMondays: ReadonlySet<string>;
  keptBedIds: readonly number[];
  keptNowIds: readonly number[];
  worths: Answered<readonly BedWorth[] | null>;
  turn: (id: number) => void;
  choose: (ids: readonly number[]) => void;
};

/** Every candidate bed with its tick, what it costs either way and what it is worth while the others are as ticked. */
export function BedTable({ rows, units, blooms, shortMondays, keptBedIds, keptNowIds, worths, turn, choose }: Props) {
  const worthOf = new Map((worths.answer ?? []).map((worth) => [worth.bedId, worth]));
  const openIds = rows.filter(({ forbidden }) => forbidden.length === 0).map(({ id }) => id);
  const columns: readonly Column<BedRow>[] = [
    {
      head: "Keep",
      phone: "first",
      cell: (row) => <KeepTick row={row} isKept={keptBedIds.includes(row.id)} turn={turn} />,
    },
    ...BED_COLUMNS,
    {
      head: "Bloom, over the weeks that are short",
      phone: "first",
      cell: ({ id }) => (
        <BedStrip blooms={blooms} bedId={id} isKept={keptBedIds.includes(id)} shortMondays={shortMondays} />
      ),
    },
    ...worthColumns(worthOf, worths.isStale, units),
  ];
  return (
    <>
      <p>
        Tick a bed to keep it in the ground. A bed’s worth is what the season would cost more if that bed alone went the
        other way. Survival in the ground: <strong>no published figure was found; it is your own number</strong>, for
        the farm on <a href="/farm/winter">Winter costs</a>, for a planting on its bed’s page; a row says so where a bed
        has its own.
      </p>
      <p className="actions">
        <button type="button" onClick={() => choose(keptNowIds)}>
          As the farm stands
        </button>
        <button type="button" onClick={() => choose([])}>
          Dig all
        </button>
        <button type="button" onClick={() => choose(openIds)}>
          Keep all that may be
        </button>
      </p>
      {worths.problem && (
        <p className="notice bad" role="alert">
          The worth of the beds could not be worked out: {worths.problem}
        </p>
      )}
      <p className="small soft worth-status" role="status">
        {worths.isStale && !worths.problem && `Working out what each of ${countOf(rows.length, "bed")} is worth…`}
      </p>
      <Table
        caption="Candidate beds, kept or dug"
        isCaptionHidden
        className="keep-beds"
        columns={columns}
        rows={rows}
        keyOf={({ id }) => id}
        rowClass={({ id }) => (keptBedIds.includes(id) ? "kept-row" : undefined)}
        insteadOf={({ id }) => (worthOf.has(id) ? null : { from: BED_COLUMNS.length + 2, words: "…" })}
      />
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
    <span className="keep-word">Keep {name}</span>
  </label>
);

const BED_COLUMNS: readonly Column<BedRow>[] = [
  {
    head: "Bed",
    kind: "name",
    cell: ({ id, name, forbidden }) => (
      <>
        <a className="bed-tag" href={`/beds/${id}`}>
          {name}
        </a>
        {forbidden.map((words) => (
          <span key={words} className="soft small why-not" id={`why-${id}`}>
            Dug: {words}
          </span>
        ))}
      </>
    ),
  },
  {
    head: "Varieties",
    unit: "clumps",
    cell: ({ varieties }) =>
      varieties.map(({ name, colour, clumpCount }) => (
        <span key={`${name} ${colour}`} className="variety-line">
          {name} <ColourWord colour={colour} />, {inWholes(clumpCount)}
        </span>
      )),
  },
];

/** What a bed is worth, once that is worked out. */
function worthColumns(
  worthOf: ReadonlyMap<number, BedWorth>,
  isStale: boolean,
  units: Units,
): readonly Column<BedRow>[] {
  const column = (head: string, words: (worth: BedWorth, row: BedRow) => ReactNode): Column<BedRow> => ({
    head,
    cell: (row) => {
      const worth = worthOf.get(row.id);
      return worth && <span data-stale={isStale}>{words(worth, row)}</span>;
    },
  });
  return [
    column("Focal stems gained", ({ focalStems, weeks }) => (
      <>
        <strong>{stemsInWords(focalStems)}</strong>{" "}
        {weeks.length > 0 && <span className="visually-hidden">{weeksInWords(weeks)}</span>}
      </>
    )),
    column("Worth", (worth, { forbidden }) => (
      <>
        <span className={isWrongWay(worth) && forbidden.length === 0 ? "good-word" : undefined}>
          {worthInWords(worth)}
        </span>
        {worth.wouldBreak.map((limit) => (
          <span key={limit.resource} className="small why-not">
            The other way it would take {limitInWords(limit, units)}.
          </span>
        ))}
      </>
    )),
    column("Keeping pays at a survival", (worth, { survivalShare, hasOwnSurvival }) => (
      <>
        {breakEvenInWords(worth)}{" "}
        {hasOwnSurvival && <span className="small why-not">reckoned with its own {inPercent(survivalShare)}</span>}
      </>
    )),
  ];
}
