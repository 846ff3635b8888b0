"use client";

import type { SurvivalPoint } from "#lib/plan/winter/survival-sweep";
import type { PointsDone } from "../../threads/jobs";
import { countOf, inPercent, inRoundMoney, inWholes } from "../../ui/numbers";
import type { BedRow } from "../planner-data";
import { AskedWork } from "./asked-work";
import { bedNames } from "./found-words";
import { useWork } from "./use-work.client";

/** The best choice again for other winter survivals: how far it hangs on a number nobody has published. */
export function SurvivalSweep({ seasonYear, rows }: { seasonYear: number; rows: readonly BedRow[] }) {
  const work = useWork<PointsDone, readonly SurvivalPoint[]>("/keep-or-dig/choose");
  return (
    <section aria-labelledby="sweep">
      <h2 id="sweep">If winter survival were…</h2>
      <p>
        No published figure was found for clumps left in the ground, so see how far the best choice hangs on yours. The
        same survival is supposed for every bed.
      </p>
      <AskedWork
        work={work}
        start={() => work.start({ question: "sweep", seasonYear })}
        startWords="Try survivals from 30 to 100 %"
        stopWords="Stop with those that are done"
        makingReady="Choosing the beds anew for each…"
        inWords={({ doneCount, ofCount }) => `${doneCount} of ${countOf(ofCount, "survival")} done…`}
        failedWords="Not tried"
      >
        {work.answer?.length === 0 && <p className="notice">Stopped before the first was done.</p>}
        {work.answer && work.answer.length > 0 && (
          <table className="cards-on-phone">
            <caption>The best choice at each survival</caption>
            <thead>
              <tr>
                <th scope="col">Survival</th>
                <th scope="col" className="number">
                  Beds kept
                </th>
                <th scope="col">Which</th>
                <th scope="col" className="number">
                  Weighed
                </th>
                <th scope="col" className="number">
                  Focal short, stems
                </th>
              </tr>
            </thead>
            <tbody>
              {work.answer.map(({ survivalShare, choice }) => (
                <tr key={survivalShare}>
                  <th scope="row">{inPercent(survivalShare)}</th>
                  {"keptBedIds" in choice ? (
                    <>
                      <td className="number" data-label="Beds kept">
                        {choice.keptBedIds.length}
                      </td>
                      <td data-label="Which">{bedNames(rows, choice.keptBedIds)}</td>
                      <td className="number" data-label="Weighed">
                        {inRoundMoney(choice.totalCents)}
                      </td>
                      <td className="number" data-label="Focal short, stems">
                        {inWholes(choice.focalShortStems)}
                      </td>
                    </>
                  ) : (
                    <td colSpan={4}>nothing keeps within what is at hand</td>
                  )}
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </AskedWork>
    </section>
  );
}
