import { countOf, inWholes } from "#lib/plan/words/numbers";
import { ColourWords } from "../../ui/colour-words";
import { CoverBar } from "../../ui/cover-bar";
import type { CoverageAnswer } from "./use-coverage.client";

/** How far the booking would be covered as it stands, before it is saved. */
export function CoveragePanel({ answer: { coverage, problems, isStale, isOffline } }: { answer: CoverageAnswer }) {
  return (
    <section className="card" aria-labelledby="coverage" data-stale={isStale ? "true" : "false"}>
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
        {coverage && coverage.lines.length === 0 && <p className="soft">Nothing is asked for yet.</p>}
        {coverage && coverage.lines.length > 0 && (
          <>
            <p>
              <strong>{countOf(coverage.stems, "stem")}</strong> with spare:{" "}
              {coverage.shortStems === 0 ? (
                <span className="good-word">all covered.</span>
              ) : (
                <span className="short-word">{inWholes(coverage.shortStems)} short.</span>
              )}{" "}
              {coverage.shortElsewhereStems > 0 && (
                <span className="short-word">
                  It takes {countOf(coverage.shortElsewhereStems, "stem")} from other bookings.
                </span>
              )}
            </p>
            <ul className="plain-list stack">
              {coverage.lines.map((line) => (
                <li key={line.words}>
                  <span className="row">
                    <strong>{line.role}</strong> <ColourWords colours={line.colours} /> {inWholes(line.stems)} stems{" "}
                    <CoverBar needStems={line.stems} shortStems={line.shortStems} />
                  </span>
                  {line.reasons.length > 0 && (
                    <ul className="reasons small">
                      {line.reasons.map((reason) => (
                        <li key={reason}>{reason}</li>
                      ))}
                    </ul>
                  )}
                </li>
              ))}
            </ul>
          </>
        )}
      </div>
    </section>
  );
}
