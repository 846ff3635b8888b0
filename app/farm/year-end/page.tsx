import type { Metadata } from "next";
import { toDayNumber } from "#lib/domain/day";
import { type CurveProposal, curveProposals, seasonsOver } from "#lib/plan/learning/review/curve-proposals";
import { type WinterProposal, winterProposals } from "#lib/plan/learning/review/winter-proposals";
import { curveNamed, proposalInWords, proposalsLead, seasonsInWords } from "#lib/plan/words/learned-words";
import { countOf } from "#lib/plan/words/numbers";
import { winterFigureNamed, winterProposalInWords, wintersInWords } from "#lib/plan/words/winter-lesson-words";
import { today } from "../../clock";
import { loadFarm } from "../../load";
import { Form } from "../../ui/form.client";
import { FarmTabs } from "../farm-tabs";
import { takeProposal, takeWinterProposal } from "./year-end-actions";

export const metadata: Metadata = { title: "Year’s end" };

/** Proposals shown at once, those that move most first. */
const FIRST = 12;

/** What recorded seasons taught of the farm's curves, each taken with a tap. */
export default function YearEndPage() {
  const farm = loadFarm();
  const now = toDayNumber(today());
  const proposals = curveProposals(farm, now).sort((a, b) => newsOf(b) - newsOf(a));
  const rest = proposals.slice(FIRST);
  const seasons = seasonsOver(farm, now);
  return (
    <>
      <p className="crumb">
        <a href="/farm">Farm</a>
      </p>
      <h1>Year’s end</h1>
      <FarmTabs open="/farm/year-end" />
      <p className="lead">{proposalsLead(proposals.length, seasons)}</p>
      {seasons.length > 0 && (
        <p>
          <a href="/farm/year-end/how-true">How true the forecasts of {seasons.at(-1)} were, crop by crop</a>
        </p>
      )}
      <WinterProposals proposals={winterProposals(farm)} />
      <Proposals proposals={proposals.slice(0, FIRST)} />
      {rest.length > 0 && (
        <details className="fold">
          <summary>{countOf(rest.length, "smaller change")}</summary>
          <Proposals proposals={rest} />
        </details>
      )}
      {proposals.length > 0 && (
        <p className="note">
          The curve as it stands weighs as one season that came true, each recorded season as much as was seen of it:
          one season moves a curve half of the way, two move it two thirds. Looks, first blooms and cuts of all that was
          ready are counted; a list that was filled says only that there were at least so many, and moves nothing. First
          cuts are proposed from two days on, stems from 5&nbsp;% on.
        </p>
      )}
    </>
  );
}

/** How far a proposal moves a curve: a day weighs as much as a twentieth of the stems. */
const newsOf = ({ was, is }: CurveProposal): number =>
  Math.abs(is.laterDays - was.laterDays) + 20 * Math.abs(is.yieldFactor - was.yieldFactor);

/** What counts of clumps taught of the winter. Nothing while nothing was counted, or where it says what the farm reckons with already. */
const WinterProposals = ({ proposals }: { proposals: readonly WinterProposal[] }) =>
  proposals.length > 0 && (
    <>
      <ul className="cards">
        {proposals.map((one) => (
          <li key={one.part} className="card">
            <h2 className="card-title">
              <a href="/farm/winter">{winterFigureNamed(one)}</a>
            </h2>
            <p>
              <b>{winterProposalInWords(one)}</b>
            </p>
            <p className="note">{wintersInWords(one)}</p>
            <Form
              action={takeWinterProposal}
              submit="Take it"
              label={`Take ${winterFigureNamed(one)}: ${winterProposalInWords(one)}`}
              hidden={{ part: one.part, is: one.is }}
              isQuiet
            />
          </li>
        ))}
      </ul>
      <p className="note">
        What the farm reckoned with before weighs as one winter, each counted winter nearly as one: less where few
        clumps were counted, since clumps of one winter fare alike (our guess).
      </p>
    </>
  );

const Proposals = ({ proposals }: { proposals: readonly CurveProposal[] }) => (
  <ul className="cards">
    {proposals.map((one) => (
      <li key={`${one.curve.id} ${one.part}`} className="card">
        <h2 className="card-title">
          <a href={`/farm/crops/${one.crop.id}`}>{curveNamed(one)}</a>
        </h2>
        <p>
          <b>{proposalInWords(one)}</b>
        </p>
        <p className="note">
          Rests on {countOf(one.seasons.length, "season")}: {seasonsInWords(one.part, one.seasons)}
        </p>
        <Form
          action={takeProposal}
          submit="Take it"
          label={`Take ${curveNamed(one)}: ${proposalInWords(one)}`}
          hidden={{
            curveId: one.curve.id,
            part: one.part,
            laterDays: one.is.laterDays,
            yieldFactor: one.is.yieldFactor,
          }}
          isQuiet
        />
      </li>
    ))}
  </ul>
);
