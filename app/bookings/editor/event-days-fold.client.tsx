"use client";

import { addDays, withWeekday } from "#lib/domain/day";
import { daySchema } from "#lib/domain/day-schema";
import { type EventHabit, eventDaysOf } from "#lib/domain/event-days";
import { MOST_DAYS_BEFORE, OWN_EVENT_DAYS, oddEventDays } from "#lib/domain/records/event-days";
import { daysBeforeInWords, eventDaysInWords } from "#lib/plan/words/event-days-words";
import { SelectField } from "../../ui/form-fields.client";
import type { BookingForm } from "./draft";

type Props = { form: BookingForm; habit: EventHabit; onChange: (part: Partial<BookingForm>) => void };

const NAMES = ["leadDays", "designDays", "deliverDays"] as const;

/** Back from the event, the last first, as they are thought of. */
const DAYS_BEFORE = Array.from({ length: MOST_DAYS_BEFORE + 1 }, (_, daysBefore) => daysBefore);

/** When a booking is cut, made up and delivered: the farm's habit in words, and for each of the three a day of its own. */
export function EventDaysFold({ form, habit, onChange }: Props) {
  const read = daySchema.safeParse(form.eventOn);
  const eventOn = read.success ? read.data : null;
  const own = {
    leadDays: daysTyped(form.leadDays),
    designDays: daysTyped(form.designDays),
    deliverDays: daysTyped(form.deliverDays),
  };
  const odd = new Map(oddEventDays(own).map(({ field, message }) => [field, message]));
  const words = odd.size > 0 ? [...odd.values()].join("; ") : eventDaysInWords(eventOn, eventDaysOf(habit, own));
  const following = (name: (typeof NAMES)[number]) => {
    const daysBefore = eventDaysOf(habit, { ...own, [name]: null })[name];
    return odd.size > 0 ? "follows from the others" : `as usual: ${inDays(daysBefore)}`;
  };
  const inDays = (daysBefore: number) =>
    eventOn === null
      ? daysBeforeInWords(daysBefore)
      : `${withWeekday(addDays(eventOn, -daysBefore))}, ${daysBeforeInWords(daysBefore)}`;
  return (
    <details>
      <summary>
        <span>
          Event days: <span className={odd.size > 0 ? "short-word" : undefined}>{words}</span>
        </span>
      </summary>
      <p className="note">
        Left as usual, a day goes by the farm’s habit and by the days you choose here. An event that moves takes them
        along.
      </p>
      <div className="event-days">
        {NAMES.map((name) => (
          <SelectField
            key={name}
            name={name}
            label={OWN_EVENT_DAYS[name].label}
            options={[
              { value: "", label: following(name) },
              ...DAYS_BEFORE.map((daysBefore) => ({ value: String(daysBefore), label: inDays(daysBefore) })),
            ]}
            value={form[name]}
            onChange={(typed) => onChange({ [name]: typed })}
          />
        ))}
      </div>
    </details>
  );
}

/** What was chosen; nothing where it is none of the days that can be. */
const daysTyped = (text: string): number | null => (/^\d+$/.test(text) ? Number(text) : null);
