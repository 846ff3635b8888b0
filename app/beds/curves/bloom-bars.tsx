import { tickStep } from "d3-array";
import { type Day, inShort } from "#lib/domain/day";
import type { Colour } from "#lib/domain/words";
import { inWholes } from "#lib/plan/words/numbers";

type Props = {
  readonly weeks: readonly { readonly from: Day; readonly likely: number }[];
  readonly colour: Colour;
  /** What the picture says, for who cannot see it. */
  readonly words: string;
};

/** As wide as a card on a phone, so that its letters stay as large as they are. */
const SIZE = { width: 330, height: 190 };
const LEFT = 38;
const TOP = 10;
const SOIL = SIZE.height - 22;
/** Room that the name of a week takes, its gap included. */
const NAME_WIDTH = 50;

/** Stems that open week by week, a bar a week in the flower's own colour. */
export function BloomBars({ weeks, colour, words }: Props) {
  const most = Math.max(1, ...weeks.map(({ likely }) => likely));
  const step = Math.max(1, tickStep(0, most, 3));
  const lines = Array.from({ length: Math.floor(most / step) }, (_, index) => (index + 1) * step);
  const width = (SIZE.width - LEFT - 4) / Math.max(1, weeks.length);
  const bar = Math.min(width * 0.86, 26);
  const heightOf = (stems: number) => (stems / most) * (SOIL - TOP);
  const namedEvery = Math.max(1, Math.ceil(NAME_WIDTH / width));
  return (
    <svg className="bloom-bars" viewBox={`0 0 ${SIZE.width} ${SIZE.height}`} role="img" aria-label={words}>
      {lines.map((stems) => (
        <g key={stems}>
          <path className="bars-line" d={`M${LEFT} ${SOIL - heightOf(stems)}H${SIZE.width}`} />
          <text x={LEFT - 6} y={SOIL - heightOf(stems) + 4} textAnchor="end">
            {inWholes(stems)}
          </text>
        </g>
      ))}
      <path
        className={`bar f-${colour}`}
        d={weeks
          .map(({ likely }, week) => {
            const [x, height] = [LEFT + (week + 0.5) * width - bar / 2, heightOf(likely)];
            return `M${x.toFixed(1)} ${(SOIL - height).toFixed(1)}h${bar.toFixed(1)}v${height.toFixed(1)}h-${bar.toFixed(1)}z`;
          })
          .join("")}
      />
      <path className="strip-soil" d={`M${LEFT} ${SOIL}H${SIZE.width}`} />
      {weeks.map(
        ({ from }, week) =>
          week % namedEvery === 0 && (
            <text key={from} x={LEFT + (week + 0.5) * width} y={SOIL + 16} textAnchor="middle">
              {inShort(from)}
            </text>
          ),
      )}
    </svg>
  );
}
