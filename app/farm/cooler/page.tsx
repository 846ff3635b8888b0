import type { Metadata } from "next";
import { z } from "zod";
import { toDayNumber, yearOf } from "#lib/domain/day";
import { ById } from "#lib/domain/snapshot";
import { GONE_AFTER_DAYS, stemsIn, storedLots } from "#lib/plan/road/cooler";
import { stemsCutUnrecorded } from "#lib/plan/road/cut-unrecorded";
import { coolerLead, isPast, lotInWords, otherLotsInWords } from "#lib/plan/words/cooler-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { Arrivals } from "../../buying/placed/arrivals";
import { today } from "../../clock";
import { loadPlan } from "../../load";
import { Empty } from "../../ui/empty";
import { Form } from "../../ui/form.client";
import { varietyChoices } from "../crops/variety-choices";
import { FarmTabs } from "../farm-tabs";
import { clearPast } from "./cooler-actions";
import { CoolerForm } from "./cooler-form";
import { LotCard } from "./lot-card";
import { LotHistory } from "./lot-history";

export const metadata: Metadata = { title: "Cooler" };

/** Lots that are shown at once; the rest, and those that are empty, are a tap away. */
const LOTS_FIRST = 12;

const query = z.object({ show: z.enum(["first", "all"]).catch("first") });

/** What stands in the cooler, the oldest first: until when it is of use, for whom, and buttons for what leaves it. */
export default async function CoolerPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { show } = query.parse(await searchParams);
  const day = today();
  const now = toDayNumber(day);
  const plan = { ...loadPlan(yearOf(day)), today: now };
  const { farm, bookings } = plan.snapshot;
  const lots = storedLots(plan);
  const standing = lots.filter(({ leftStems }) => leftStems > 0);
  const past = standing.filter((lot) => isPast(lot, now));
  const keeping = standing.filter((lot) => !isPast(lot, now));
  const shown = show === "all" ? keeping : keeping.slice(0, LOTS_FIRST);
  const empty = lots.filter(({ leftStems }) => leftStems === 0);
  const clients = new ById("booking", bookings);
  const choices = varietyChoices(plan.snapshot);
  const of = { farm, today: now, choices, clientOf: (id: number) => clients.get(id).client };
  const unrecorded = stemsCutUnrecorded(plan.work.match, plan.today);
  return (
    <>
      <h1>Cooler</h1>
      <FarmTabs open="/farm/cooler" />
      <p className="lead">{coolerLead(lots, now)}</p>
      {standing.length === 0 && (
        <Empty title="Nothing stands in the cooler">
          <p>
            What you record as cut on <a href="/today">Today</a> stands here by itself. Put in below what comes from
            elsewhere.
          </p>
        </Empty>
      )}
      <Arrivals snapshot={plan.snapshot} today={day} />
      {past.length > 0 && (
        <section aria-labelledby="past" className="notice bad">
          <h2 id="past">{inWholes(stemsIn(past))} past their days</h2>
          <ul className="cut-rows">
            {past.map((lot) => (
              <LotCard key={lotInWords(lot)} lot={lot} {...of} />
            ))}
          </ul>
          <Form action={clearPast} submit={`Throw all ${inWholes(stemsIn(past))} away`} label="Past their days" />
        </section>
      )}
      {keeping.length > 0 && <h2>The oldest first</h2>}
      <ul className="cut-rows">
        {shown.map((lot) => (
          <LotCard key={lotInWords(lot)} lot={lot} {...of} />
        ))}
      </ul>
      {show === "first" && (keeping.length > shown.length || empty.length > 0) && (
        <p className="no-print">
          <a className="button" href="/farm/cooler?show=all">
            Show {otherLotsInWords(keeping.slice(LOTS_FIRST), empty)}
          </a>
        </p>
      )}
      {show === "all" && empty.length > 0 && (
        <details className="fold">
          <summary>Emptied: {countOf(empty.length, "lot")}</summary>
          <ul className="done-rows">
            {empty.map((lot) => (
              <li key={lotInWords(lot)}>
                <span>{lotInWords(lot)}</span>
                <LotHistory lot={lot} {...of} />
              </li>
            ))}
          </ul>
        </details>
      )}
      {unrecorded > 0 && (
        <p className="note">
          {countOf(unrecorded, "stem")} for events ahead count as cut as planned and are not recorded: they stand in no
          lot here. <a href="/today">Record those days</a> and they do.
        </p>
      )}
      <h2>Put stems in</h2>
      <p className="note">
        Stems that the forecast does not hold: from another grower, or more than a bed was forecast. What you record as
        cut on Today stands here already. A lot that nobody empties counts as gone {GONE_AFTER_DAYS} days after its
        last.
      </p>
      {choices.length === 0 ? (
        <p>
          First add a variety to <a href="/farm/crops">one of the crops</a>.
        </p>
      ) : (
        <CoolerForm key={lots.length} choices={choices} farm={farm} label="Put stems in" />
      )}
    </>
  );
}
