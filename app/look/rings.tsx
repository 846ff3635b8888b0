const ACROSS = 10;
const STEP = 14;
const MOST_RINGS = 40;
const UNITS = [5, 10, 20, 50, 100, 200, 500, 1000];

/** Stems that one ring stands for, so that the largest gap is a handful of rows. */
export const ringUnit = (mostStems: number): number =>
  UNITS.find((unit) => mostStems / unit <= MOST_RINGS) ?? UNITS[UNITS.length - 1];

/** Missing stems, counted: a ring for each `unit` of them, ten a row. The number stands beside it in words. */
export function Rings({ stems, unit }: { stems: number; unit: number }) {
  const count = Math.max(1, Math.round(stems / unit));
  const [across, down] = [Math.min(count, ACROSS), Math.ceil(count / ACROSS)];
  return (
    <svg
      className="counted"
      width={across * STEP}
      height={down * STEP}
      viewBox={`0 0 ${across * STEP} ${down * STEP}`}
      aria-hidden="true"
    >
      {Array.from({ length: count }, (_, ring) => (
        <use
          // biome-ignore lint/suspicious/noArrayIndexKey: rings are alike
          key={ring}
          href="#ring"
          x={(ring % ACROSS) * STEP + 1}
          y={Math.floor(ring / ACROSS) * STEP + 1}
          width={STEP - 2}
          height={STEP - 2}
        />
      ))}
    </svg>
  );
}
