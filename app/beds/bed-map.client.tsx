"use client";

import { useState } from "react";
import { toDay, weekInWords } from "#lib/domain/day";
import type { WeekSpan } from "./bed-lines";
import { BED_HEIGHT, BED_WIDTH, MAP_WIDTH, type MapBed, type MapPlan } from "./map-beds";

type Props = { readonly plan: MapPlan; readonly weeks: WeekSpan; readonly firstShown: number };

/** Plants drawn one under the other in a bed, two abreast. */
const PLANT_STEP = 6.7;
const ROWS_OF_PLANTS = Math.floor((BED_HEIGHT - 6) / PLANT_STEP);

/** The beds in plan, with what is in bloom in a week that is drawn along by hand. Each bed leads to its page. */
export function BedMap({ plan, weeks, firstShown }: Props) {
  const [week, setWeek] = useState(firstShown);
  const words = weekInWords(toDay(weeks.first + 7 * week));
  return (
    <figure className="plate bed-map">
      <div className="map-week">
        <output htmlFor="map-week">{words}</output>
        <input
          id="map-week"
          type="range"
          min="0"
          max={weeks.count - 1}
          value={week}
          onChange={({ target }) => setWeek(Number(target.value))}
          aria-label="Week shown on the map"
          aria-valuetext={words}
        />
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: an svg that groups links has no element of its own */}
      <svg viewBox={`-3 0 ${MAP_WIDTH} ${plan.height}`} role="group" aria-label="The beds of the farm in plan">
        {plan.names.map(({ name, x, y }) => (
          <text key={name} className="map-field" x={x} y={y}>
            {name}
          </text>
        ))}
        {plan.beds.map((bed) => (
          <Bed key={bed.id} bed={bed} week={week} />
        ))}
      </svg>
      <figcaption className="note">
        What is cut that week, bed by bed. A bed drawn round with dashes stays in the ground over winter.
      </figcaption>
    </figure>
  );
}

function Bed({ bed: { id, name, sign, x, y, isKept, plantings }, week }: { bed: MapBed; week: number }) {
  let row = 0;
  return (
    <a className="map-bed" href={`/beds/${id}`} aria-label={name}>
      <rect className={isKept ? "kept" : undefined} x={x} y={y} width={BED_WIDTH} height={BED_HEIGHT} rx="2.2" />
      {plantings.map(({ colour, firstWeek, lastWeek, share }, index) => {
        const from = row;
        row += Math.round(share * ROWS_OF_PLANTS);
        if (week < firstWeek || week > lastWeek) return null;
        const path = plantsPath(x, y, from, Math.min(row, ROWS_OF_PLANTS));
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: plantings stand in their order and never move
          <g key={index} className={`f-${colour}`}>
            <path className="plant-edge" d={path} />
            <path className="plant" d={path} />
          </g>
        );
      })}
      {sign && (
        <text className="map-sign" x={x + BED_WIDTH / 2} y={y + BED_HEIGHT + 14} textAnchor="middle">
          {sign}
        </text>
      )}
    </a>
  );
}

/** Plants from a row to before another, as points of a round stroke. */
function plantsPath(x: number, y: number, from: number, to: number): string {
  let path = "";
  for (let row = from; row < Math.max(from + 1, to); row++)
    for (const column of [3.4, 10.1]) path += `M${(x + column).toFixed(1)} ${(y + 6 + row * PLANT_STEP).toFixed(1)}h0`;
  return path;
}
