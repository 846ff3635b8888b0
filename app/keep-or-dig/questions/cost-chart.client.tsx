"use client";

import { CartesianGrid, Line, LineChart, ResponsiveContainer, XAxis, YAxis } from "recharts";
import { inRoundMoney } from "#lib/plan/words/numbers";

const TICK = { fontSize: 12, fill: "var(--ink-2)" };

/** Cost against the number of beds kept at most. A picture of the table under it. */
export function CostChart({ points }: { points: readonly { readonly atMostCount: number; readonly cents: number }[] }) {
  return (
    <div
      className="cost-chart"
      role="img"
      aria-label="Weighed cost by number of beds kept at most; the table says the same"
    >
      <ResponsiveContainer width="100%" height={260}>
        <LineChart data={[...points]} margin={{ top: 10, right: 16, bottom: 24, left: 8 }} accessibilityLayer={false}>
          <CartesianGrid vertical={false} stroke="var(--line)" />
          <XAxis
            dataKey="atMostCount"
            tick={TICK}
            tickLine={false}
            label={{ value: "beds kept at most", position: "insideBottom", offset: -14, ...TICK }}
          />
          <YAxis
            width={64}
            tick={TICK}
            tickLine={false}
            axisLine={false}
            domain={["auto", "auto"]}
            tickFormatter={inRoundMoney}
          />
          <Line
            dataKey="cents"
            stroke="var(--covered)"
            strokeWidth={2}
            dot={{ r: 4, fill: "var(--sheet)", stroke: "var(--covered)", strokeWidth: 2 }}
            isAnimationActive={false}
          />
        </LineChart>
      </ResponsiveContainer>
    </div>
  );
}
