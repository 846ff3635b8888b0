"use client";

import type { Units } from "#lib/domain/words";
import type { BedWorth } from "../../threads/jobs";
import { ColourWord } from "../../ui/colour-words";
import { countOf, inPercent, inRoundMoney, inWholes } from "../../ui/numbers";
import { limitInWords } from "../limit-words";
import type { BedRow } from "../planner-data";
import type { Answered } from "./use-answer.client";
import { breakEvenInWords, isWrongWay, stemsInWords, weeksInWords, worthInWords } from "./worth-words";

type Props = {
  rows: readonly BedRow[];
  units: Units;
  keptBedIds: readonly number[];
  keptNowIds: readonly number[];
  worths: Answered<readonly BedWorth[] | null>;
  turn: (id: number) => void;
  choose: (ids: readonly number[]) => void;
};

/** Every candidate bed with its tick, what it costs either way and what it is worth while the others are as ticked. */
export function BedTable({ rows, units, keptBedIds, keptNowIds, worths, turn, choose }: Props) {
  const worthOf = new Map((worths.answer ?? []).map((worth) => [worth.bedId, worth]));
  const openIds = rows.filter(({ forbidden }) => forbidden.length === 0).map(({ id }) => id);
  return (
    <>
      <p>
        Tick a bed to keep it in the ground. A bed’s worth is what the season would cost more if that bed alone went the
        other way. Survival in the ground: <strong>no published figure was found; it is your own number</strong>, for
        the farm on <a href="/farm/winter">Winter costs</a>, for a planting on its bed’s page.
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
      <table className="cards-on-phone keep-beds">
        <caption className="visually-hidden">Candidate beds, kept or dug</caption>
        <thead>
          <tr>
            <th scope="col">Keep</th>
            <th scope="col">Bed</th>
            <th scope="col">Varieties, clumps</th>
            <th scope="col">Now</th>
            <th scope="col" className="number">
              Cost to keep
            </th>
            <th scope="col" className="number">
              Cost to dig
            </th>
            <th scope="col">Focal stems gained, by week</th>
            <th scope="col">Worth</th>
            <th scope="col">Keeping pays at a survival</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id} className={keptBedIds.includes(row.id) ? "kept-row" : undefined}>
              <KeepCell row={row} isKept={keptBedIds.includes(row.id)} turn={turn} />
              <th scope="row">
                <a href={`/beds/${row.id}`}>{row.name}</a>
                {row.forbidden.map((words) => (
                  <span key={words} className="short-word small why-not" id={`why-${row.id}`}>
                    Dug: {words}
                  </span>
                ))}
              </th>
              <td data-label="Varieties">
                {row.varieties.map(({ name, colour, clumpCount }) => (
                  <span key={`${name} ${colour}`} className="variety-line">
                    {name} <ColourWord colour={colour} />, {inWholes(clumpCount)}
                  </span>
                ))}
              </td>
              <td data-label="Now">{row.now}</td>
              <td className="number" data-label="Cost to keep">
                {inRoundMoney(row.keep.cents)}
              </td>
              <td className="number" data-label="Cost to dig">
                {inRoundMoney(row.dig.cents)}
              </td>
              <WorthCells row={row} worth={worthOf.get(row.id)} isStale={worths.isStale} units={units} />
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

const KeepCell = ({ row, isKept, turn }: { row: BedRow; isKept: boolean; turn: (id: number) => void }) => (
  <td>
    <label className="check keep-check">
      <input
        type="checkbox"
        checked={isKept}
        disabled={row.forbidden.length > 0}
        aria-describedby={row.forbidden.length ? `why-${row.id}` : undefined}
        onChange={() => turn(row.id)}
      />
      <span className="keep-word">Keep {row.name}</span>
    </label>
  </td>
);

type WorthProps = { row: BedRow; worth: BedWorth | undefined; isStale: boolean; units: Units };

function WorthCells({ row, worth, isStale, units }: WorthProps) {
  if (!worth)
    return (
      <td colSpan={3} className="soft">
        …
      </td>
    );
  return (
    <>
      <td data-label="Focal stems gained" data-stale={isStale}>
        <strong>{stemsInWords(worth.focalStems)}</strong>{" "}
        {worth.weeks.length > 0 && <span className="small soft">{weeksInWords(worth.weeks)}</span>}
      </td>
      <td data-label="Worth" data-stale={isStale}>
        <span className={isWrongWay(worth) && row.forbidden.length === 0 ? "short-word" : undefined}>
          {worthInWords(worth)}
        </span>
        {worth.wouldBreak.map((limit) => (
          <span key={limit} className="small why-not">
            The other way it would take more than {limitInWords(limit, units)}.
          </span>
        ))}
      </td>
      <td data-label="Keeping pays at a survival" data-stale={isStale}>
        {breakEvenInWords(worth)}{" "}
        <span className="small soft">
          assumed {inPercent(row.survivalShare)}, {row.hasOwnSurvival ? "the bed’s own" : "the farm’s"} number
        </span>
      </td>
    </>
  );
}
