import type { ReactNode } from "react";
import { allOf } from "#lib/domain/listed";
import type { Units } from "#lib/domain/words";
import type { WinterChoice } from "#lib/plan/winter/choose-beds";
import type { FewestBeds } from "#lib/plan/winter/fewest-beds";
import { infeasibleInWords } from "#lib/plan/words/limit-words";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { winteringInWords } from "#lib/plan/words/season-lead";
import type { BedRow } from "../planner-data";

/** "D1, D4 and D7", or "no bed". */
export function bedNames(rows: readonly BedRow[], ids: readonly number[]): string {
  const names = rows.filter(({ id }) => ids.includes(id)).map(({ name }) => name);
  return allOf(names) || "no bed";
}

type ChoiceProps = { choice: WinterChoice; rows: readonly BedRow[]; units: Units; ticks: ReactNode };

type TicksProps = { ids: readonly number[]; keptBedIds: readonly number[]; choose: (ids: readonly number[]) => void };

/** Whether the ticks stand at what was found; if not, the button that sets them to it. */
export const Ticks = ({ ids, keptBedIds, choose }: TicksProps) =>
  ids.length === keptBedIds.length && ids.every((id) => keptBedIds.includes(id)) ? (
    <>The ticks are set to it.</>
  ) : (
    <button type="button" className="quiet" onClick={() => choose(ids)}>
      Set the ticks to it
    </button>
  );

/** ": 75 % of the clumps survive the winter, first cut 5 June", of the beds kept; where none is, of those that could be. */
function restsOn(rows: readonly BedRow[], keptBedIds: readonly number[]): string {
  const kept = rows.filter(({ id }) => keptBedIds.includes(id));
  const words = winteringInWords(kept.length > 0 ? kept : rows.filter(({ forbidden }) => forbidden.length === 0));
  if (words === "") return "";
  return kept.length > 0 ? `: ${words}` : `: if kept, ${words}`;
}

/** What the search for the cheapest beds can honestly say. */
export function ChoiceFound({ choice, rows, units, ticks }: ChoiceProps) {
  if (choice.status === "infeasible")
    return (
      <div className="notice bad" role="status">
        <p>
          <strong>No choice of beds keeps within what is at hand.</strong> {infeasibleInWords(choice.because, units)}{" "}
          Change it on <a href="/farm#keeping">Farm</a>.
        </p>
      </div>
    );
  if (choice.status === "stopped early")
    return (
      <p className="notice" role="status">
        Stopped before a choice was found that keeps within what is at hand. The ticks are as they were.
      </p>
    );
  const kept = bedNames(rows, choice.keptBedIds);
  return (
    <div className="notice good" role="status">
      {choice.status === "optimal" ? (
        <p>
          <strong className="good-word">✓ Best for these numbers{restsOn(rows, choice.keptBedIds)}.</strong> Keep {kept}
          : a net cost of {inRoundMoney(choice.totalCents)}, and it is proved that no other choice of beds costs less,
          to the cent. {ticks}
        </p>
      ) : (
        <p>
          <strong>Stopped: at most {inRoundMoney(choice.totalCents - choice.boundCents)} from the best.</strong> Keep{" "}
          {kept}: a net cost of {inRoundMoney(choice.totalCents)}; no choice can beat {inRoundMoney(choice.boundCents)}.{" "}
          {ticks}
        </p>
      )}
      <p className="small">
        Of this {inRoundMoney(choice.buyInCents)} is expected buy-in,{" "}
        {choice.brokenStems > 0 &&
          `${inRoundMoney(choice.brokenCents)} broken promises of ${countOf(choice.brokenStems, "stem")}, `}
        {inRoundMoney(choice.fitCents)} poorer fits and older stems, {inRoundMoney(choice.labourCents)} labour,{" "}
        {inRoundMoney(choice.materialCents)} leaves, tarp and store, {inRoundMoney(choice.replacementCents)} plants
        bought again less tubers gained, {inRoundMoney(choice.freeBedCents)} early crop foregone.
      </p>
    </div>
  );
}

/** What is known of the fewest beds, and what no winter bed can cover. */
export function FewestFound({ found, rows, ticks }: { found: FewestBeds; rows: readonly BedRow[]; ticks: ReactNode }) {
  const { status, keptBedIds, focalNeedStems, focalShortStems, boundShortStems } = found;
  if (status === "infeasible")
    return (
      <p className="notice bad" role="status">
        No choice of beds keeps within what is at hand. Change it on <a href="/farm#keeping">Farm</a>.
      </p>
    );
  return (
    <div className="notice good" role="status">
      <p>
        <strong className="good-word">
          {status === "optimal" ? "✓ Fewest for these numbers: " : "Stopped: "}
          {countOf(keptBedIds.length, "bed")}.
        </strong>{" "}
        Keep {bedNames(rows, keptBedIds)}, and {inWholes(focalShortStems)} of {countOf(focalNeedStems, "focal stem")}{" "}
        {focalShortStems === 1 ? "stays" : "stay"} short ({inWholes(found.noneKeptShortStems)} with every bed dug).{" "}
        {status === "optimal"
          ? `It is proved that no choice within what is at hand leaves fewer short, and none of fewer beds as few${restsOn(rows, keptBedIds)}.`
          : `No choice leaves fewer than ${inWholes(boundShortStems)} short; it was not proved that fewer beds would not do.`}{" "}
        What it costs was not asked. {ticks}
      </p>
      {found.allKeptShortStems > 0 && (
        <p className="small">
          With every bed kept that may be, {countOf(found.allKeptShortStems, "focal stem")} would still be short: what
          blooms early cannot cover those, so buy in, swap within the palette, or plant more.
        </p>
      )}
    </div>
  );
}
