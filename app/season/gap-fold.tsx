import { toDay, withWeekday } from "#lib/domain/day";
import type { Bottleneck } from "#lib/plan/road/bottleneck";
import type { Gap } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import { stemHolders } from "#lib/plan/road/stem-holders";
import { isAhead } from "#lib/plan/road/to-come";
import { coloursInWords } from "#lib/plan/words/colour-words";
import { reasonInWords } from "#lib/plan/words/gap-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { CountedRow } from "../look/counted-row";
import { CoverLadder } from "./cover-ladder";
import { HolderLines } from "./holder-lines";

type Props = {
  gap: Gap;
  plan: Plan;
  /** The plan with the beds worth keeping, when that is known. */
  chosen: Plan | null;
  bottleneck: Bottleneck;
  isOpen: boolean;
  stemsPerMark: number;
};

/** One gap of a week: how much is short for whom; opened, why, who has the stems by name, and until its day what could cover it. */
export function GapFold({ gap, plan, chosen, bottleneck, isOpen, stemsPerMark }: Props) {
  const { need, shortStems, coveredStems } = gap;
  const named = need.cropId === null ? null : plan.snapshot.crops.find((crop) => crop.id === need.cropId);
  const holders = stemHolders(plan.match, bottleneck);
  const askers = new Set(bottleneck.needIndexes.map((index) => plan.match.needs[index].booking.id));
  return (
    <details className="gap-fold" open={isOpen}>
      <summary>
        <b className="gap-count">{inWholes(shortStems)}</b>
        <svg className="gl plain-sign" width="24" height="24" aria-hidden="true">
          <use href={`#r-${need.role}`} />
        </svg>
        <span>
          <strong>{need.role}</strong> <span className="visually-hidden">short</span> for {need.booking.client}
          <small className="gap-of-need">
            {inWholes(coveredStems)} of {inWholes(need.stems)} covered, {named ? `${named.name.toLowerCase()} ` : ""}in{" "}
            {coloursInWords(need)}
          </small>
        </span>
        <CountedRow covered={[]} shortStems={shortStems} stemsPerMark={stemsPerMark} marksARow={20} />
      </summary>
      <div className="gap-why">
        <h3>Why</h3>
        <ul className="reasons">
          {gap.reasons.map(({ reason, stems }) => (
            <li key={reason}>{reasonInWords(reason, stems, need)}.</li>
          ))}
        </ul>
        {holders.length > 0 && (
          <>
            <h3>Who has the stems</h3>
            <p className="small">
              {inWholes(bottleneck.needStems)} are asked of them by {countOf(askers.size, "booking")};{" "}
              {inWholes(bottleneck.supplyStems)} can be cut.
            </p>
            <HolderLines plan={plan} holders={holders} own={need.booking} />
          </>
        )}
        {isAhead(plan, need.eventDay) && (
          <>
            <h3>What could cover it, by {withWeekday(toDay(need.eventDay))}</h3>
            <CoverLadder gap={gap} chosen={chosen} buyIn={plan.buying.find((line) => line.gap === gap)} />
          </>
        )}
      </div>
    </details>
  );
}
