import type { Metadata } from "next";
import { z } from "zod";
import { ROLES } from "#lib/domain/words";
import { shortWeeks } from "#lib/plan/road/short-weeks";
import { barrenInWords } from "#lib/plan/words/barren-words";
import { SeasonHead } from "./frame/season-head";
import { seasonYear } from "./frame/season-year";
import { loadBand, loadPlan } from "./load";
import { BloomRows } from "./season/bloom-rows";
import { SeasonRibbon } from "./season/ribbon/season-ribbon";
import { SeasonFigures } from "./season/season-figures";
import { SeasonStart } from "./season/season-start";
import { ShortWeekList } from "./season/short-week-list";
import { WeekTable } from "./season/week-table";
import { ProblemList } from "./ui/problem-list";

export const metadata: Metadata = { title: "Season" };

const query = z.object({ role: z.enum(ROLES).catch("focal"), all: z.string().optional().catch(undefined) });

/** The season week by week: the short weeks in words, then need against what can be cut, then what blooms when. */
export default async function SeasonPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { role, all } = query.parse(await searchParams);
  const year = await seasonYear();
  const plan = loadPlan(year);
  const { farm } = plan.snapshot;
  const shorts = shortWeeks(plan);
  const band = loadBand(year).map((roles) => roles[ROLES.indexOf(role)]);
  return (
    <>
      <SeasonHead title={`${farm.name}, season ${year}`} seasonYear={year} back="/" />
      {farm.isInvented && (
        <p className="soft">
          This is an invented farm with invented clients, to look around in. <a href="/farm#start">Start my own farm</a>
        </p>
      )}
      <ProblemList title="The forecast is missing something" problems={plan.problems.map(barrenInWords)} />
      {plan.weeks.length === 0 ? (
        <SeasonStart plan={plan} />
      ) : (
        <>
          <ShortWeekList shorts={shorts} role={role} />
          <SeasonFigures plan={plan} />
          <section className="plate" aria-labelledby="weeks">
            <SeasonRibbon
              role={role}
              winters={[{ key: "stands", words: "As it stands", plan }]}
              shown="stands"
              band={band}
            >
              <h2 id="weeks">{`${role[0].toUpperCase()}${role.slice(1)} stems, week by week`}</h2>
              <ul className="tabs" aria-label="Role shown">
                {ROLES.map((name) => (
                  <li key={name}>
                    <a
                      href={name === "focal" ? "/#weeks" : `/?role=${name}#weeks`}
                      aria-current={name === role ? "true" : undefined}
                    >
                      {name}
                    </a>
                  </li>
                ))}
              </ul>
            </SeasonRibbon>
            <details>
              <summary>The same numbers as a table</summary>
              <WeekTable weeks={plan.weeks} band={band} role={role} />
            </details>
          </section>
          <BloomRows plan={plan} role={role} showAll={all !== undefined} />
        </>
      )}
    </>
  );
}
