import { toDay, toDayNumber, withWeekday } from "#lib/domain/day";
import { COLD_NIGHT } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { type FrostAlarm, frostAlarm, stemsAtRisk } from "#lib/plan/road/frost-alarm";
import { frostNight, isFrostWatch } from "#lib/plan/road/frost-night";
import { type PickLine, placeOf } from "#lib/plan/road/pick-list";
import { bookingsOfLines, pickRows } from "#lib/plan/road/pick-rows";
import type { Plan } from "#lib/plan/road/plan";
import {
  alarmInWords,
  coldNightInWords,
  forWhomInWords,
  noRoomTitle,
  tenderInWords,
  tooLateInWords,
} from "#lib/plan/words/frost-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { degreesInWords } from "#lib/plan/words/weather-words";
import { Cautions } from "../frame/cautions";
import { Form } from "../ui/form.client";
import { RecordField } from "../ui/record-field";
import { StateSign } from "../ui/state-sign";
import { saveColdNight } from "./frost-actions";

/** The frost watch of autumn: tender stems that are promised, the forecast to type in, and when it is cold enough what to cut ahead. Nothing at other times. */
export function FrostWatch({ plan, today }: { plan: Plan; today: number }) {
  if (!isFrostWatch(plan)) return null;
  const { farm } = plan.snapshot;
  const night = frostNight(plan.snapshot, today);
  const alarm = night && frostAlarm(plan, toDayNumber(night.morning));
  const { coldNightOn, coldNightLowC } = formFields(COLD_NIGHT, farm, farm);
  return (
    <section aria-labelledby="frost">
      <h2 id="frost">{night ? `Frost: ${coldNightInWords(night, farm.units)}` : "Frost watch"}</h2>
      {night && alarm ? (
        <>
          <p className="state short told">
            <StateSign of="short" />
            <span>
              {tooLateInWords(night, today)} {alarmInWords(alarm)}
            </span>
          </p>
          <AtRisk alarm={alarm} />
          <CutAhead lines={alarm.cutAhead} />
          <NoRoom lines={alarm.noRoom} />
          {farm.bucketPlaces === null && alarm.cutAhead.length > 0 && (
            <p className="quiet">
              How many buckets the cooler holds is not written down, so the list knows no end of room.{" "}
              <a href="/farm#hands">Write it down</a>
            </p>
          )}
          <Cautions crops={[...new Set([...alarm.cutAhead, ...alarm.noRoom].map(({ crop }) => crop))]} open />
        </>
      ) : (
        <p>
          {tenderInWords(stemsAtRisk(plan, today))} The alarm sounds at {degreesInWords(farm.frostAlarmC, farm.units)}{" "}
          or colder (<a href="/farm#frost">change that</a>), by your forecast here or by the weather file.
        </p>
      )}
      <Form action={saveColdNight} submit="Keep the forecast" label="The coldest night ahead" isQuiet>
        <div className="fields">
          <RecordField {...coldNightOn} />
          <RecordField {...coldNightLowC} />
        </div>
      </Form>
    </section>
  );
}

/** The bookings that stand against tender stems, the earliest first. */
const AtRisk = ({ alarm: { atRisk } }: { alarm: FrostAlarm }) =>
  atRisk.length > 0 && (
    <details className="fold">
      <summary>Whose stems stand: {countOf(atRisk.length, "booking")}</summary>
      <ul className="done-rows">
        {[...atRisk]
          .sort((a, b) => (a.booking.eventOn < b.booking.eventOn ? -1 : 1))
          .map(({ booking, stems }) => (
            <li key={booking.id}>
              <span>
                <a href={`/bookings/${booking.id}`}>{booking.client}</a>, {withWeekday(booking.eventOn)}
              </span>
              <b>{inWholes(stems)}</b>
            </li>
          ))}
      </ul>
    </details>
  );

/** What to cut before the frost, by day and bed. */
function CutAhead({ lines }: { lines: readonly PickLine[] }) {
  const days = [...new Set(lines.map(({ cutDay }) => cutDay))];
  return days.map((day) => {
    const linesOfDay = lines.filter(({ cutDay }) => cutDay === day);
    return (
      <details key={day} className="fold prints-open" open={day === days[0]}>
        <summary>
          Cut on {withWeekday(toDay(day))}: {countOf(pickRows(linesOfDay).length, "row")}
        </summary>
        <Rows lines={linesOfDay} />
      </details>
    );
  });
}

/** What would keep too, if there were more room than the cooler has: for whoever can borrow a cold place. */
const NoRoom = ({ lines }: { lines: readonly PickLine[] }) =>
  lines.length > 0 && (
    <details className="fold">
      <summary>{noRoomTitle(lines)}</summary>
      <Rows lines={lines} />
    </details>
  );

/** Rows to cut, bed by bed, with whom they are for. */
function Rows({ lines }: { lines: readonly PickLine[] }) {
  const bookings = bookingsOfLines(lines);
  return (
    <ul className="done-rows">
      {pickRows(lines).map((row) => (
        <li key={`${placeOf(row.stand)} ${row.variety.id}`}>
          <span>
            <b>{placeOf(row.stand)}</b> {row.crop.name} {row.variety.name}
            <br />
            <small>{forWhomInWords(row, bookings)}</small>
          </span>
          <b>{inWholes(row.stemsToCut)}</b>
        </li>
      ))}
    </ul>
  );
}
