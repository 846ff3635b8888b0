import type { Day } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { withoutDayInWords } from "#lib/plan/words/lapse-words";
import { Form } from "../../ui/form.client";
import { StateSign } from "../../ui/state-sign";
import { giveLapses } from "./lapse-actions";
import { withoutLapseDay } from "./without-lapse-day";

type Props = { snapshot: Snapshot; seasonYear: number; today: Day };

/** Offers a day on which to lapse to the enquiries and holds that have none: they hold stems back until then for ever. */
export function LapseNews({ snapshot: { bookings, farm }, seasonYear, today }: Props) {
  const open = withoutLapseDay(bookings, seasonYear, today);
  if (open.length === 0) return null;
  return (
    <div className="promise">
      <p className="state risk told">
        <StateSign of="risk" />
        <span>
          {withoutDayInWords(open)}: {open.length === 1 ? "its" : "their"} stems stay spoken for until the event. By the
          farm’s habit an enquiry lapses after {farm.enquiryDays} days and a hold after {farm.holdDays}.
        </span>
      </p>
      <Form
        action={giveLapses}
        hidden={{ seasonYear }}
        submit="Count them from today"
        label="When enquiries and holds lapse"
        isQuiet
      />
    </div>
  );
}
