import { type Day, dayInYear, toDay, toDayNumber, withWeekday } from "#lib/domain/day";
import { frostOnRecord } from "#lib/plan/road/first-frost";
import { isFrostDue } from "#lib/plan/road/frost-night";
import type { Plan } from "#lib/plan/road/plan";
import { killingFrostOf } from "#lib/plan/road/plants-seen";
import { Form } from "../ui/form.client";
import { DayField } from "../ui/form-fields.client";
import { noteFrost, takeBackFrost } from "./frost-actions";

/** From the frost watch to the year's end: one tap says that frost has ended what is tender, and the plan stops counting on it. */
export function FrostCame({ plan, today }: { plan: Plan; today: Day }) {
  const { farm, weather } = plan.snapshot;
  if (!isFrostDue(farm, plan.seasonYear, toDayNumber(today))) return null;
  const came = killingFrostOf(farm, plan.seasonYear);
  const onRecord = weather && frostOnRecord(weather, plan.seasonYear, toDayNumber(today));
  return (
    <section aria-labelledby="frost-came">
      <h2 id="frost-came">{came === null ? "Has it frozen?" : "Frost has come"}</h2>
      {came === null ? (
        <>
          <p>
            A killing frost ends dahlias and all that is tender. Until you say so the plan reckons with{" "}
            {withWeekday(dayInYear(farm.frost.firstAutumnP50, plan.seasonYear))}, your median.
            {onRecord !== null && ` Your weather file has the first frost on ${withWeekday(toDay(onRecord))}.`}
          </p>
          <Form action={noteFrost} submit="It froze" label="A killing frost" isQuiet>
            <div className="fields">
              <DayField name="frostOn" label="On the morning of" value={onRecord === null ? today : toDay(onRecord)} />
            </div>
          </Form>
        </>
      ) : (
        <>
          <p>Since {withWeekday(toDay(came))} nothing tender is on the lists. What was cut before stands.</p>
          <Form action={takeBackFrost} submit="Take back" label="Take the killing frost back" isQuiet />
        </>
      )}
    </section>
  );
}
