"use client";

import { useEffect, useState } from "react";
import type { Problem } from "#lib/domain/problem";
import type { BookingForm } from "./draft";
import type { DraftCoverage } from "./draft-coverage";

/** The server's last word on the form: its problems or its coverage. `isStale` while a newer answer is on its way. */
export type CoverageAnswer = {
  problems: readonly Problem[];
  coverage: DraftCoverage | null;
  isStale: boolean;
  isOffline: boolean;
};

/** Whether nothing is known of the form yet, because its first answer is on its way. */
export const isFirstAwaited = ({ coverage, problems, isOffline }: CoverageAnswer): boolean =>
  coverage === null && problems.length === 0 && !isOffline;

/** Keystrokes that follow within this time are asked as one. */
const SETTLE_MS = 15;

/** Asks for the coverage of the form whenever it changes; the newest question wins. */
export function useCoverage(form: BookingForm, bookingId: number | null): CoverageAnswer {
  const [answer, setAnswer] = useState<CoverageAnswer>({
    problems: [],
    coverage: null,
    isStale: true,
    isOffline: false,
  });
  useEffect(() => {
    const asking = new AbortController();
    setAnswer((before) => ({ ...before, isStale: true }));
    const timer = setTimeout(async () => {
      try {
        const response = await fetch("/bookings/coverage", {
          method: "POST",
          headers: { "content-type": "application/json" },
          body: JSON.stringify({ bookingId, form }),
          signal: asking.signal,
        });
        const { problems, coverage }: { problems: Problem[]; coverage?: DraftCoverage } = await response.json();
        setAnswer((before) => ({
          problems,
          coverage: coverage ?? before.coverage,
          isStale: problems.length > 0,
          isOffline: false,
        }));
      } catch {
        if (!asking.signal.aborted) setAnswer((before) => ({ ...before, isOffline: true }));
      }
    }, SETTLE_MS);
    return () => {
      clearTimeout(timer);
      asking.abort();
    };
  }, [form, bookingId]);
  return answer;
}
