import type { Metadata } from "next";
import { type Day, inShort, toDay, toDayNumber, withWeekday, yearOf } from "#lib/domain/day";
import { BUD_SIGNS } from "#lib/domain/records/bud-look";
import type { Snapshot } from "#lib/domain/snapshot";
import { type BudWalkStop, budWalk } from "#lib/plan/learning/season/bud-walk";
import { clumpsToCount } from "#lib/plan/winter/clumps-to-count";
import { countOf } from "#lib/plan/words/numbers";
import { today } from "../../clock";
import { loadFarm } from "../../load";
import { mayOpen } from "../../people/allowed";
import { IfMay } from "../../people/if-may";
import { roleNow } from "../../people/who";
import { ColourWord } from "../../ui/colour-words";
import { Empty } from "../../ui/empty";
import { Form } from "../../ui/form.client";
import { ClumpCounts } from "../losses/clump-counts";
import { PlantsLost } from "../losses/plants-lost";
import { noteBuds } from "./bud-actions";

export const metadata: Metadata = { title: "Bud walk" };

/** The beds whose buds are worth a look this week, in order, each noted in two taps; what is seen moves the days on which stems are expected. */
export default function BudWalkPage() {
  const snapshot = loadFarm();
  const now = today();
  const stops = budWalk(snapshot, yearOf(now), toDayNumber(now));
  const beds = byBed(stops);
  return (
    <>
      {mayOpen(roleNow(), "/beds") && (
        <p className="crumb">
          <a href="/beds">Beds</a>
        </p>
      )}
      <h1>Bud walk</h1>
      <IfMay call="beds/losses/loss-actions.ts#noteLoss">
        <ClumpCounts clumps={clumpsToCount(snapshot, yearOf(now), toDayNumber(now))} today={now} />
      </IfMay>
      {stops.length === 0 ? (
        <Empty title="No bed to look at this week">
          <p>From four weeks before its first cut a bed stands here, until something was cut in it.</p>
        </Empty>
      ) : (
        <>
          <p>
            {countOf(stops.length, "planting")} due within four weeks. Early, as due and late are against the day as
            planned. What you note once a week tells how late the season runs; none of it is asked for.
          </p>
          {beds.slice(0, BEDS_FIRST).map((one) => (
            <BedStops key={one.bed.id} {...one} snapshot={snapshot} today={now} />
          ))}
          {beds.length > BEDS_FIRST && (
            <details>
              <summary>{countOf(beds.length - BEDS_FIRST, "more bed")}</summary>
              {beds.slice(BEDS_FIRST).map((one) => (
                <BedStops key={one.bed.id} {...one} snapshot={snapshot} today={now} />
              ))}
            </details>
          )}
        </>
      )}
    </>
  );
}

/** Beds that stand open; the rest of the walk is a tap away. */
const BEDS_FIRST = 6;

type BedProps = ReturnType<typeof byBed>[number] & { snapshot: Snapshot; today: Day };

function BedStops({ bed, ofBed, snapshot, today: now }: BedProps) {
  return (
    <section aria-labelledby={`bed-${bed.id}`} className="bud-bed">
      <h2 id={`bed-${bed.id}`} className="bed-tag">
        {bed.name}
      </h2>
      <ul className="plain">
        {ofBed.map((stop) => (
          <Stop key={stop.row.planting.id} stop={stop} snapshot={snapshot} today={now} />
        ))}
      </ul>
    </section>
  );
}

function byBed(stops: readonly BudWalkStop[]) {
  const beds = new Map(stops.map(({ row }) => [row.bed.id, row.bed]));
  return [...beds.values()].map((bed) => ({ bed, ofBed: stops.filter(({ row }) => row.bed.id === bed.id) }));
}

/** A planting: when it is due, what was seen last, and a button for each thing that may be seen; days to go, where they are typed, go with it. */
type StopProps = { stop: BudWalkStop; snapshot: Snapshot; today: Day };

function Stop({ stop: { row, dueDay, lastLook }, snapshot, today: now }: StopProps) {
  const name = `${row.crop.name} ${row.variety.name}`;
  return (
    <li className="bud-stop">
      <p>
        <b>{name}</b>, <ColourWord colour={row.variety.colour} />, due {withWeekday(toDay(dueDay))}
        {row.firstCut !== null && row.firstCut !== dueDay && <>, as planned {inShort(toDay(row.firstCut))}</>}
        {lastLook && (
          <small className="soft">
            {" "}
            {inShort(lastLook.lookedOn)}: {lastLook.sign}
            {lastLook.daysToCut !== null && `, ${countOf(lastLook.daysToCut, "day")} to go`}
          </small>
        )}
      </p>
      <Form
        key={lastLook ? `${lastLook.lookedOn} ${lastLook.sign} ${lastLook.daysToCut}` : "none"}
        action={noteBuds}
        hidden={{ bedId: row.bed.id, varietyId: row.variety.id, lookedOn: now }}
        label={`${row.bed.name}, ${name}`}
        beside={
          <>
            {/* What Enter would press: nothing, since no sign is meant by a number of days alone. */}
            <button type="submit" disabled hidden />
            {BUD_SIGNS.map((sign) => (
              <button key={sign} type="submit" name="sign" value={sign}>
                {sign}
                <span className="visually-hidden">: {name}</span>
              </button>
            ))}
            <label className="days-to-go">
              <input name="daysToCut" inputMode="numeric" size={3} autoComplete="off" />
              days to go
            </label>
          </>
        }
      />
      <PlantsLost row={row} snapshot={snapshot} today={now} />
    </li>
  );
}
