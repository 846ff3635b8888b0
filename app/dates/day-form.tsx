import { FieldProblem } from "../ui/field-problem";
import type { AskedDay } from "./asked-day";

/** Asks for any day, by its address. A day that is none stays in the field with what is wrong. */
export function DayForm({ asked }: { asked: AskedDay }) {
  const typed = asked.kind === "day" ? asked.day : asked.kind === "refused" ? asked.typed : "";
  const isRefused = asked.kind === "refused";
  return (
    <form method="get" action="/dates" className="day-form" noValidate>
      <div className="field">
        <label htmlFor="on">Day asked for</label>
        <input
          key={typed}
          id="on"
          name="on"
          // A browser shows nothing in a date field that holds no date.
          type={isRefused ? "text" : "date"}
          defaultValue={typed}
          aria-invalid={isRefused ? true : undefined}
          aria-describedby="on-problem"
        />
        <FieldProblem id="on-problem" message={isRefused ? asked.message : undefined} />
      </div>
      <button type="submit" className="main">
        Look at this day
      </button>
    </form>
  );
}
