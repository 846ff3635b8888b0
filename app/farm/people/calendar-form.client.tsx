"use client";

import { useActionState } from "react";
import type { CodeState } from "./code-state";
import { newCalendar } from "./people-actions";
import { ShownCode } from "./shown-code";

/** Makes the address of the calendar and shows it until the page is left: it is kept nowhere. */
export function CalendarForm({ isShared }: { isShared: boolean }) {
  const [code, make, isPending] = useActionState<CodeState>(newCalendar, null);
  return (
    <form action={make} className="kit">
      <button type="submit" disabled={isPending}>
        {isShared ? "A new address" : "Make an address"}
      </button>
      <ShownCode code={code} label="Code of the calendar’s address">
        Give this address to a calendar program on the farm’s network as a subscription. It stays until you end it.
      </ShownCode>
    </form>
  );
}
