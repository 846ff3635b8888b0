"use client";

import { Bar, CartesianGrid, ComposedChart, ErrorBar, XAxis, YAxis } from "recharts";
import { useInBrowser } from "../../ui/use-in-browser.client";

type Week = { readonly from: string; readonly likely: number; readonly spread: readonly [number, number] };

/** As wide as a card on a phone, so that its letters stay as large as they are. */
const SIZE = { width: 320, height: 210 };

/**
 * Stems by week: a column for the likely count, a whisker from low to high. The numbers stand in the table beside it. Drawn in the browser alone:
 * the server would write attributes of style, which the door forbids.
 */
export function CurveChart({ weeks, words }: { weeks: readonly Week[]; words: string }) {
  const isInBrowser = useInBrowser();
  return (
    <div className="curve-chart" role="img" aria-label={words}>
      {isInBrowser && <Drawing weeks={weeks} />}
    </div>
  );
}

const Drawing = ({ weeks }: { weeks: readonly Week[] }) => (
  <ComposedChart
    {...SIZE}
    data={weeks.map((week) => ({ ...week, spread: [...week.spread] }))}
    margin={{ top: 8, right: 8, bottom: 0, left: 0 }}
    accessibilityLayer={false}
  >
    <CartesianGrid vertical={false} stroke="var(--line)" />
    <XAxis
      dataKey="from"
      tick={{ fontSize: 11, fill: "var(--ink-2)" }}
      interval="equidistantPreserveStart"
      tickLine={false}
    />
    <YAxis
      width={44}
      tick={{ fontSize: 11, fill: "var(--ink-2)" }}
      tickLine={false}
      axisLine={false}
      allowDecimals={false}
    />
    <Bar dataKey="likely" fill="var(--covered)" isAnimationActive={false}>
      <ErrorBar dataKey="spread" width={3} stroke="var(--ink)" strokeWidth={1.2} isAnimationActive={false} />
    </Bar>
  </ComposedChart>
);
