import type { Metadata } from "next";
import { inShort, toDay, toDayNumber, withWeekday, yearOf } from "#lib/domain/day";
import { BUD_LOOK, type BudLook } from "#lib/domain/records/bud-look";
import type { Farm } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { type BudWalkStop, budWalk } from "#lib/plan/learning/season/bud-walk";
import { countOf } from "#lib/plan/words/numbers";
import { today } from "../../clock";
import { loadFarm } from "../../load";
import { ColourWord } from "../../ui/colour-words";
import { Empty } from "../../ui/empty";
import { Form } from "../../ui/form.client";
import { RecordField } from "../../ui/record-field";
import { noteBuds } from "./bud-actions";

export const metadata: Metadata = { title: "Bud walk" };

/** The beds whose buds are worth a look this week, in order, each noted in two taps; what is seen moves the days on which stems are expected. */
export default function BudWalkPage() {
  const snapshot = loadFarm();
  const now = today();
  const stops = budWalk(snapshot, yearOf(now), toDayNumber(now));
  return (
    <>
      <p className="crumb">
        <a href="/beds">Beds</a>
      </p>
      <h1>Bud walk</h1>
      {stops.length === 0 ? (
        <Empty title="No bed to look at this week">
          <p>From five weeks before its first cut a bed stands here, until something was cut in it.</p>
        </Empty>
      ) : (
        <>
          <p>
            {countOf(stops.length, "planting")} due within five weeks. What you note once a week tells how late the
            season runs; none of it is asked for.
          </p>
          <ul className="cards">
            {stops.map((stop) => (
              <Stop key={stop.row.planting.id} stop={stop} farm={snapshot.farm} today={now} />
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function Stop({ stop, farm, today: now }: { stop: BudWalkStop; farm: Farm; today: BudLook["lookedOn"] }) {
  const { row, dueDay, lastLook } = stop;
  const { sign, daysToCut } = formFields(BUD_LOOK, undefined, farm);
  const name = `${row.crop.name} ${row.variety.name}`;
  return (
    <li className="card">
      <h2 className="card-title">
        {row.bed.name}: {name}, <ColourWord colour={row.variety.colour} />
      </h2>
      <p>
        First cut due {withWeekday(toDay(dueDay))}.{" "}
        {lastLook && (
          <small>
            {inShort(lastLook.lookedOn)}: {lastLook.sign}
            {lastLook.daysToCut !== null && `, ${countOf(lastLook.daysToCut, "day")} to go`}
          </small>
        )}
      </p>
      <Form
        key={lastLook ? `${lastLook.lookedOn} ${lastLook.sign} ${lastLook.daysToCut}` : "none"}
        action={noteBuds}
        submit="Note it"
        hidden={{ bedId: row.bed.id, varietyId: row.variety.id, lookedOn: now }}
        label={`${row.bed.name}, ${name}`}
        isQuiet
      >
        <div className="fields">
          <RecordField {...sign} />
          <RecordField {...daysToCut} />
        </div>
      </Form>
    </li>
  );
}
