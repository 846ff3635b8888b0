import type { Metadata } from "next";
import { z } from "zod";
import { toDayNumber } from "#lib/domain/day";
import { seasonBefore } from "#lib/plan/winter/carried-plantings";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { weeksGoneInWords } from "#lib/plan/words/to-come-words";
import { today } from "../clock";
import { SeasonHead } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { loadPlan } from "../load";
import { Patterns } from "../look/patterns";
import { mayOpen } from "../people/allowed";
import { IfMay } from "../people/if-may";
import { roleNow } from "../people/who";
import { Empty } from "../ui/empty";
import { BedFields } from "./bed-fields";
import { BedForm } from "./bed-form";
import { bedFields, stemsFrom, weeksFrom, weeksShown } from "./bed-lines";
import { BedMap } from "./bed-map.client";
import { areaInWords, inNameOrder } from "./bed-words";
import { CarryOver } from "./carry-over";
import { CropFilter } from "./crop-filter";
import { mapPlan } from "./map-beds";

export const metadata: Metadata = { title: "Beds" };

const query = z.object({
  crop: z.coerce.number().int().optional().catch(undefined),
  weeks: z.enum(["ahead", "all"]).catch("ahead"),
});

/** Every bed with what grows in it this season, or only those with a crop. */
export default async function BedsPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { crop: cropId, weeks: asked } = query.parse(await searchParams);
  const year = await seasonYear();
  const { snapshot, forecast } = loadPlan(year);
  const { units } = snapshot.farm;
  const forecasts = forecast.plantings.filter(({ crop }) => !cropId || crop.id === cropId);
  const shown = new Set(forecasts.map(({ bed }) => bed.id));
  const beds = inNameOrder(cropId ? snapshot.beds.filter(({ id }) => shown.has(id)) : snapshot.beds);
  const earlier = seasonBefore(snapshot, year);
  const season = weeksShown(forecast.plantings, year);
  const { ahead, goneCount } = weeksFrom(season, toDayNumber(today()));
  const weeks = asked === "all" ? season : ahead;
  const stems = stemsFrom(forecasts, weeks.first);
  const fields = bedFields(beds, forecasts, weeks);
  const week = Math.floor((toDayNumber(today()) - weeks.first) / 7);
  const firstShown = week >= 0 && week < weeks.count ? week : Math.floor(weeks.count / 2);
  return (
    <>
      <Patterns />
      <SeasonHead title={`Beds in ${year}`} seasonYear={year} back="/beds" />
      {snapshot.beds.length === 0 ? (
        <Empty title="No beds yet">
          {mayOpen(roleNow(), "/farm/files") ? (
            <>
              <p>
                Add the first bed below, then say what is planted in it. Or bring all of them in from a spreadsheet.
              </p>
              <p className="actions">
                <a className="button" href="/farm/files#import">
                  Bring in CSV files
                </a>
              </p>
            </>
          ) : (
            <p>The owner of the farm enters them.</p>
          )}
        </Empty>
      ) : (
        <>
          <IfMay call="beds/actions.ts#carryOver">
            {forecast.plantings.length === 0 && earlier !== null && <CarryOver fromSeason={earlier} toSeason={year} />}
          </IfMay>
          <CropFilter crops={snapshot.crops} plantings={forecast.plantings} cropId={cropId ?? null} />
          <p>
            {countOf(beds.length, "bed")}, {areaInWords(beds, units)}; {countOf(forecasts.length, "planting")}, about{" "}
            {inWholes(stems)} stems {weeks === season ? "cut in the season" : "still to come"}.{" "}
            {mayOpen(roleNow(), "/beds/buds") && <a href="/beds/buds">Bud walk</a>}
          </p>
          {goneCount > 0 && (
            <p className="no-print">
              <a href={addressOf(weeks !== season, cropId)}>
                {weeks === season ? "From this week on" : `${weeksGoneInWords(goneCount)}: show them too`}
              </a>
            </p>
          )}
          {beds.length === 0 ? (
            <p>
              No bed has this crop in {year}. <a href="/beds">Show all beds</a>
            </p>
          ) : (
            <div className="cols beds-and-map">
              <BedMap plan={mapPlan(fields, weeks)} weeks={weeks} firstShown={firstShown} />
              <div>
                <BedFields fields={fields} weeks={weeks} today={today()} />
              </div>
            </div>
          )}
        </>
      )}
      <IfMay call="beds/actions.ts#saveBed">
        <section className="no-print" aria-labelledby="add">
          <h2 id="add">Add a bed</h2>
          <p>
            <a href="/beds/grid">Many beds or plantings at once, typed or pasted from a spreadsheet</a>
          </p>
          <BedForm farm={snapshot.farm} />
        </section>
      </IfMay>
    </>
  );
}

/** The same beds with all weeks of the season, or from this week on. */
function addressOf(isWhole: boolean, cropId: number | undefined): string {
  const query = new URLSearchParams(isWhole ? { weeks: "all" } : {});
  if (cropId) query.set("crop", String(cropId));
  return query.size > 0 ? `/beds?${query}` : "/beds";
}
