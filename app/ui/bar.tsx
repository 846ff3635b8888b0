/**
 * A bar of which the part between two shares of its width (0 to 1) is painted over, for the eye alone. The shares are attributes of a drawing,
 * since the door forbids attributes of style.
 */
export const Bar = ({ className, from = 0, to = 1 }: { className: string; from?: number; to?: number }) => (
  <svg className={className} aria-hidden="true">
    <rect x={inPercent(from)} width={inPercent(to - from)} height="100%" />
  </svg>
);

const inPercent = (share: number): string => `${Math.floor(share * 100)}%`;
