/** The sign of a state beside its word: covered, likely and not sure, short, or late. `size` in pixels. */
export const StateSign = ({ of, size = 16 }: { of: "tick" | "risk" | "short" | "late"; size?: number }) => (
  <svg width={size} height={size} aria-hidden="true">
    <use href={`#m-${of}`} />
  </svg>
);
