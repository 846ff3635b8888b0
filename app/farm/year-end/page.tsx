import type { Metadata } from "next";
import { toDayNumber } from "#lib/domain/day";
import { type CurveProposal, curveProposals, seasonsOver } from "#lib/plan/learning/review/curve-proposals";
import { curveNamed, proposalInWords, proposalsLead, seasonsInWords } from "#lib/plan/words/learned-words";
import { countOf } from "#lib/plan/words/numbers";
import { today } from "../../clock";
import { loadFarm } from "../../load";
import { Form } from "../../ui/form.client";
import { FarmTabs } from "../farm-tabs";
import { takeProposal } from "./year-end-actions";

export const metadata: Metadata = { title: "Year’s end" };

/** Proposals shown at once, those that move most first. */
const FIRST = 12;

/** What recorded seasons taught of the farm's curves, each taken with a tap. */
export default function YearEndPage() {
  const farm = loadFarm();
  const now = toDayNumber(today());
  const proposals = curveProposals(farm, now).sort((a, b) => newsOf(b) - newsOf(a));
  const rest = proposals.slice(FIRST);
  return (
    <>
      <p className="crumb">
        <a href="/farm">Farm</a>
      </p>
      <h1>Year’s end</h1>
      <FarmTabs open="/farm/year-end" />
      <p className="lead">{proposalsLead(proposals.length, seasonsOver(farm, now))}</p>
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
