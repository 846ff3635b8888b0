import { countOf } from "#lib/plan/words/numbers";

/** What the ribbon's marks mean, in its empty corner. */
export const RibbonKey = ({ unit, hasWinters }: { unit: number; hasWinters: boolean }) => (
  <ul className="ribbon-key">
    <li>
      <svg width="22" height="12" aria-hidden="true">
        <path className="st" d="M1 11V4h10v-3h10v10" />
      </svg>
      the string: what the bookings need
    </li>
    <li>
      <svg className="f-coral" width="22" height="12" viewBox="-11 -6 22 12" aria-hidden="true">
        <use href="#cell-bloom" />
      </svg>
      {countOf(unit, "stem")} promised, in their own colour
    </li>
    {hasWinters && (
      <li>
        <svg className="f-blush kept" width="22" height="12" viewBox="-11 -6 22 12" aria-hidden="true">
          <use href="#cell-bloom" />
        </svg>
        {countOf(unit, "stem")} from a kept bed
      </li>
    )}
    <li>
      <svg className="pit" width="22" height="12" viewBox="-11 -6 22 12" aria-hidden="true">
        <use href="#cell-ring-mark" />
      </svg>
      bare ground: {countOf(unit, "stem")} short a ring
    </li>
    <li className="wide-only">
      <svg className="f-yellow" width="22" height="12" aria-hidden="true">
        <path className="dot-edge" d="M5 6h0M11 6h0M17 6h0" />
        <path className="dot" d="M5 6h0M11 6h0M17 6h0" />
      </svg>
      under the soil line: in bloom, nobody’s yet
    </li>
    <li className="wide-only">
      <svg width="22" height="8" aria-hidden="true">
        <path className="cl" d="M6 2l4 3.4l4-3.4" />
      </svg>
      and more than is drawn
    </li>
  </ul>
);
