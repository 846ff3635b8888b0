import { inShort } from "#lib/domain/day";
import { inWholes } from "#lib/plan/words/numbers";
import type { BedBlooms, ColourBloom } from "../bed-blooms";

const WEEK = 10;
const HEIGHT = 32;

type Props = {
  readonly blooms: BedBlooms;
  readonly bedId: number;
  readonly isKept: boolean;
  /** The Mondays of the weeks that are short of focal stems with every bed dug. */
  readonly shortMondays: ReadonlySet<string>;
};

/** A bed's bloom week by week as it is ticked, over the weeks that are short; dug, what keeping would add is dashed. */
export function BedStrip({ blooms: { mondays, byBed }, bedId, isKept, shortMondays }: Props) {
  const colours = byBed[bedId] ?? [];
  const sumOf = (fate: "dug" | "kept", week: number) => colours.reduce((sum, bloom) => sum + bloom[fate][week], 0);
  const weeks = mondays.map((_, week) => ({ dug: sumOf("dug", week), kept: sumOf("kept", week) }));
  const scale = (HEIGHT - 3) / Math.max(1, ...weeks.flatMap(({ dug, kept }) => [dug, kept]));
  const fate = isKept ? "kept" : "dug";
  const first = weeks.findIndex((week) => week[fate] > 0);
  const stems = weeks.reduce((sum, week) => sum + week[fate], 0);
  const words = first < 0 ? "nothing to cut" : `${inWholes(stems)} stems from the week of ${inShort(mondays[first])}`;
  return (
    <svg
      className={`bed-strip${isKept ? " is-kept" : ""}`}
      viewBox={`0 0 ${mondays.length * WEEK} ${HEIGHT}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={words}
    >
      <title>{words}</title>
      <path
        fill="url(#hatch)"
        d={mondays
          .map((monday, week) => (shortMondays.has(monday) ? `M${week * WEEK} 0h${WEEK}v${HEIGHT - 1}h-${WEEK}z` : ""))
          .join("")}
      />
      {stacked(colours, fate, scale).map(({ colour, path }) => (
        <path key={colour} className={`bar f-${colour}`} d={path} />
      ))}
      {!isKept && (
        <path
          className="would-add"
          d={weeks.map(({ dug, kept }, week) => (kept > dug ? box(week, dug * scale, kept * scale) : "")).join("")}
        />
      )}
      <path className="bloom-soil" d={`M0 ${HEIGHT - 0.5}H${mondays.length * WEEK}`} />
    </svg>
  );
}

/** The bars of each colour, one on the other. */
function stacked(colours: readonly ColourBloom[], fate: "dug" | "kept", scale: number) {
  const base: number[] = [];
  return colours.map((bloom) => ({
    colour: bloom.colour,
    path: bloom[fate]
      .map((stems, week) => {
        const from = base[week] ?? 0;
        base[week] = from + stems * scale;
        return stems > 0 ? box(week, from, base[week]) : "";
      })
      .join(""),
  }));
}

const box = (week: number, from: number, to: number): string =>
  `M${week * WEEK + 0.7} ${tenth(HEIGHT - 1 - to)}h${WEEK - 1.4}v${tenth(to - from)}h-${WEEK - 1.4}z`;

const tenth = (length: number): number => Math.round(length * 10) / 10;
