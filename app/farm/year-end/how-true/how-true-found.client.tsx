"use client";

import { type ReactNode, useEffect, useState } from "react";
import { inShort, monthDayInShort, toDay } from "#lib/domain/day";
import type { ForecastsDone } from "#lib/plan/learning/how-true/how-true";
import {
  type CameOf,
  type CropTruth,
  furthestOff,
  type HowTrue,
  MADE,
  type Made,
  SPRING_DAY,
  type Truth,
  WINTER_DAY,
} from "#lib/plan/learning/how-true/truth";
import {
  cropTruthInWords,
  daysLateInSign,
  firstCutsInWords,
  howTrueLead,
  inAllLead,
  mostWithinInWords,
  offInWords,
  stemsCameInWords,
  stemsOffInSign,
  wintersBeforeInWords,
} from "#lib/plan/words/how-true-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { useWork } from "../../../keep-or-dig/questions/use-work.client";
import { WorkBar } from "../../../keep-or-dig/questions/work-bar";
import { PrintButton } from "../../../ui/print-button.client";
import { type Column, Table } from "../../../ui/table";
import "./how-true.css";

type Props = { seasonYear: number; children: ReactNode };

/** Asks how true the season's forecasts were as soon as the page is there, shows how far the answer is, and then the answer, with the children below it. */
export function HowTrueFound({ seasonYear, children }: Props) {
  const { start, stop, ...work } = useWork<ForecastsDone, HowTrue | null>("/farm/year-end/how-true/forecasts");
  const [wasStopped, setWasStopped] = useState(false);
  const ask = () => {
    setWasStopped(false);
    void start({ seasonYear });
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once for each season, and again by the button
  useEffect(ask, [seasonYear]);
  if (work.answer)
    return (
      <>
        <Found truth={work.answer} />
        {children}
      </>
    );
  if (work.problem || (wasStopped && !work.isRunning))
    return (
      <>
        {work.problem && (
          <p className="notice bad" role="alert">
            It could not be worked out: {work.problem}
          </p>
        )}
        <p className="actions">
          <button type="button" onClick={ask}>
            Work it out
          </button>
        </p>
      </>
    );
  return (
    <>
      <WorkBar
        share={work.progress && work.progress.doneCount / work.progress.ofCount}
        isStopping={work.isStopping}
        stop={() => {
          setWasStopped(true);
          void stop();
        }}
        stopWords="Stop"
      >
        {work.progress
          ? `${work.progress.doneCount} of ${countOf(work.progress.ofCount, "forecast")} of ${seasonYear} worked out again…`
          : `Working out again what was forecast of ${seasonYear}…`}
      </WorkBar>
      <noscript>
        <p>
          Without scripts it comes as a file: <a href={csvAddress(seasonYear)}>CSV</a>
        </p>
      </noscript>
    </>
  );
}

const csvAddress = (seasonYear: number): string => `/farm/year-end/how-true/csv?season=${seasonYear}`;

function Found({ truth }: { truth: HowTrue }) {
  if (truth.crops.length === 0)
    return (
      <p className="lead">
        What was recorded of {truth.seasonYear} says neither when a first cut came nor how many stems stood ready.
      </p>
    );
  const furthest = furthestOff(truth.crops);
  const inAll = inAllLead(truth);
  return (
    <>
      <p className="lead">{howTrueLead(truth).join(" ")}</p>
      {inAll && <p>{inAll}</p>}
      {furthest.length > 0 && (
        <section aria-labelledby="furthest">
          <h2 id="furthest">Furthest off in winter</h2>
          <ul className="plain">
            {furthest.map((one) => (
              <li key={one.crop.id}>
                {cropTruthInWords(one)} <small>{wintersBeforeInWords(one)}</small>
              </li>
            ))}
          </ul>
          <p>
            A crop that is off the same way each season has a curve to mend:{" "}
            <a href="/farm/year-end">Year’s end proposes how</a>. Until then leave as many days on either side when you
            promise it in winter.
          </p>
        </section>
      )}
      <div className="actions no-print">
        <PrintButton />
        <a className="button" href={csvAddress(truth.seasonYear)} download>
          CSV
        </a>
      </div>
      <Table
        caption="What came against what was said: days later (+) or earlier (−), on the mean of its plantings, and stems more (+) or fewer (−)"
        columns={columnsOf(truth)}
        rows={truth.crops}
        keyOf={({ crop }) => crop.id}
        className="how-true"
        isNarrow
      />
    </>
  );
}

/** Under its heading, the day on which a forecast was made. */
const HEADS: Readonly<Record<Made, { readonly name: string; readonly on: string }>> = {
  winter: { name: "Winter", on: monthDayInShort(WINTER_DAY) },
  spring: { name: "Spring", on: monthDayInShort(SPRING_DAY) },
  "four weeks ahead": { name: "4 weeks", on: "ahead" },
};

const columnsOf = ({ all }: HowTrue): Column<CropTruth>[] => [
  {
    head: "Crop",
    kind: "name",
    cell: (row) => (
      <>
        <a href={`/farm/crops/${row.crop.id}`}>{row.crop.name}</a>
        <Known of={row} />
      </>
    ),
    foot: (
      <>
        All crops <Known of={all} />
      </>
    ),
  },
  ...MADE.map(
    (made): Column<CropTruth> => ({
      head: `${HEADS[made].name}, ${HEADS[made].on}`,
      headShown: (
        <>
          {HEADS[made].name} <small>{HEADS[made].on}</small>
        </>
      ),
      kind: "number",
      cell: ({ said }) => <Off truth={said[made]} />,
      foot: <OffInAll truth={all.said[made]} />,
    }),
  ),
];

/** What was recorded of it: without that no error says anything. */
function Known({ of }: { of: CameOf }) {
  const { stems } = of.said["four weeks ahead"];
  const firstCuts = firstCutsInWords(of);
  const [came, pickings] = stems ? stemsCameInWords(stems) : [];
  return (
    <small>
      {[firstCuts, came].filter(Boolean).join(", ")}
      {pickings && <span className="pickings"> {pickings}</span>}
    </small>
  );
}

const Off = ({ truth: { timing, stems } }: { truth: Truth }) => (
  <>
    {timing && (
      <span className="off">
        {daysLateInSign(timing.daysLate)}
        <small className="said">said {inShort(toDay(Math.round(timing.meanCameDay - timing.daysLate)))}</small>
      </span>
    )}
    {stems && (
      <span className="off">
        {stemsOffInSign(stems)}
        <small className="said">of {inWholes(stems.saidStems)} said</small>
      </span>
    )}
  </>
);

const OffInAll = ({ truth: { timing, stems } }: { truth: Truth }) => (
  <>
    {timing && <span className="off">{mostWithinInWords(timing)}</span>}
    {stems && <span className="off">{offInWords(stems)}</span>}
  </>
);
