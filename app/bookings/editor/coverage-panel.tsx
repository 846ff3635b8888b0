import type { ReactNode } from "react";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { CountedRow } from "../../look/counted-row";
import { ColourWords } from "../../ui/colour-words";
import { ShortState } from "../../ui/short-state";
import { StateSign } from "../../ui/state-sign";
import type { DraftCoverage } from "./draft-coverage";
import { type CoverageAnswer, isFirstAwaited } from "./use-coverage.client";

/** Stems that one mark of the panel stands for, and marks side by side. */
const STEMS_A_MARK = 5;
const MARKS_A_ROW = 24;

/** How far the booking would be covered as it stands, before it is saved. */
export function CoveragePanel({ answer, children }: { answer: CoverageAnswer; children: ReactNode }) {
  const { coverage, problems, isStale, isOffline } = answer;
  return (
    <section className="card coverage" aria-labelledby="coverage" data-stale={isStale ? "true" : "false"}>
      <h2 id="coverage">Coverage as typed</h2>
      <div aria-live="polite">
        {isOffline && <p className="short-word">The farm’s server cannot be reached; what you typed is still here.</p>}
        {problems.length > 0 && (
          <p className="soft">
            Still to fill in: {problems[0].message}
            {problems.length > 1 && `, and ${problems.length - 1} more`}.{" "}
            {coverage && "The figures below are from before."}
          </p>
        )}
        {isFirstAwaited(answer) && <p className="soft">Working it out…</p>}
        {coverage && coverage.lines.length === 0 && <p className="soft">Nothing is asked for yet.</p>}
        {coverage && coverage.lines.length > 0 && <Covered coverage={coverage} />}
      </div>
      {children}
    </section>
  );
}

function Covered({ coverage: { lines, stems, shortStems, losers, cutTooEarly } }: { coverage: DraftCoverage }) {
  const worst = lines.reduce((most, line) => (line.shortStems > most.shortStems ? line : most));
  return (
    <>
      <p className="coverage-answer">
        {shortStems > 0 ? (
          <>
            <b className="great short-word">{inWholes(shortStems)}</b>{" "}
            <span>
              of <strong>{countOf(stems, "stem")}</strong> with spare are <span className="short-word">short.</span>
            </span>
          </>
        ) : (
          <>
            <b className="great">{inWholes(stems)}</b>{" "}
            <span>
              {stems === 1 ? "stem" : "stems"} with spare: <span className="good-word">all covered.</span>
            </span>
          </>
        )}
      </p>
      {cutTooEarly && (
        <p className="state risk told">
          <StateSign of="risk" />
          {cutTooEarly}
        </p>
      )}
      {losers.length > 0 && (
        <div className="state risk told coverage-losers">
          <StateSign of="risk" />
          <div>
            <p>Saved so, it takes stems from other bookings:</p>
            <ul>
              {losers.map(({ id, client, day, words }) => (
                <li key={id}>
                  <a href={`/bookings/${id}`}>{client}</a>, {day}, would lose {words}.
                </li>
              ))}
            </ul>
          </div>
        </div>
      )}
      <p className="note">One bloom is five stems, one ring five short.</p>
      <ul className="coverage-lines">
        {lines.map((line) => (
          <li key={line.words}>
            <p className="row apart">
              <span>
                <svg className="gl plain-sign" width="20" height="20" aria-hidden="true">
                  <use href={`#r-${line.role}`} />
                </svg>{" "}
                <strong>{line.role}</strong> {inWholes(line.stems)}
              </span>
              <ShortState stems={line.shortStems} all="covered" />
            </p>
            <CountedRow
              covered={line.covered}
              shortStems={line.shortStems}
              stemsPerMark={STEMS_A_MARK}
              marksARow={MARKS_A_ROW}
            />
            <p className="note">
              <ColourWords colours={line.colours} />
            </p>
            {line.reasons.length > 0 && (
              <details open={line === worst}>
                <summary className="small">Why{line.holders.length > 0 && ", and whose they are"}</summary>
                <ul className="reasons small">
                  {line.reasons.map((reason) => (
                    <li key={reason}>{reason}</li>
                  ))}
                  {line.holders.map(({ id, client, day, stems, words, isPromised }) => (
                    <li key={id}>
                      <a href={`/bookings/${id}`}>{client}</a>, {day}, {isPromised ? "was promised" : "has"}{" "}
                      {countOf(stems, "stem")} that would do: {words}
                    </li>
                  ))}
                </ul>
              </details>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}
