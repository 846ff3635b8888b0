import { monthDayInShort } from "#lib/domain/day";
import type { FrostDates } from "#lib/domain/records/farm-settings";

/** What the marks of the week chart mean, in words. */
export const WeekKey = ({ frost, frostDay }: { frost: FrostDates; frostDay: string }) => (
  <ul className="key">
    <li>
      <svg viewBox="0 0 24 14" className="chart-key" aria-hidden="true">
        <rect x="1" y="1" width="22" height="12" fill="var(--reach-wash)" stroke="var(--reach)" />
      </svg>
      within reach: all that can be cut for the week's events
    </li>
    <li>
      <svg viewBox="0 0 24 14" aria-hidden="true">
        <path d="M4 1h16M4 13h16M12 1V13" stroke="var(--reach)" strokeWidth="1.5" fill="none" />
      </svg>
      from a poor to a rich year (about one in ten lies beyond either)
    </li>
    <li>
      <svg viewBox="0 0 24 14" aria-hidden="true">
        <rect x="1" y="1" width="22" height="12" fill="var(--covered)" />
      </svg>
      needed and covered
    </li>
    <li>
      <svg viewBox="0 0 24 14" aria-hidden="true">
        <rect x="1" y="1" width="22" height="12" fill="var(--short-wash)" stroke="var(--short)" />
        <path d="M4 13 12 1M10 13 18 1M16 13 23 3" stroke="var(--short)" strokeWidth="2" />
      </svg>
      short
    </li>
    <li>
      <svg viewBox="0 0 24 14" aria-hidden="true">
        <path d="M12 0V14" stroke="var(--ink)" strokeWidth="2" strokeDasharray="3 2" />
      </svg>
      first frost reckoned with: {frostDay} (one year in ten by {monthDayInShort(frost.firstAutumnP10)}, nine in ten by{" "}
      {monthDayInShort(frost.firstAutumnP90)})
    </li>
  </ul>
);
